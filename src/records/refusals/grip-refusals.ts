import type { VentRecord } from '../schemas/grip.js';

/** Why holes cannot be drilled as a grip says. */
export interface GripRefusals {
  /** `thumbHole` and the grip's `thumb` say different things. */
  'thumb-disagrees': { readonly hasThumbHole: boolean };
  'spans-too-short': {
    /** Path of the grip. */
    readonly field: string;
    readonly spanMiddleIn: number;
    readonly spanRingIn: number;
    readonly bridgeIn: number;
  };
  /** Nothing is left of the ball between two of its holes. */
  'bores-meet': {
    /** Path of the grip. */
    readonly field: string;
    readonly hole: string;
    readonly other: string;
    readonly overlapIn: number;
    /** How deep they meet; 0 at the surface. */
    readonly depthIn: number;
  };
  /** Nothing is left of the ball over a hole that runs in at a slant. */
  'no-lip': { readonly field: string; readonly hole: string };
  'vent-impossible': {
    /** Path of the vent. */
    readonly field: string;
    readonly why: 'no-such-hole' | 'mouth-in-hole' | 'below-the-hole' | 'too-slanted';
    readonly into: VentRecord['into'];
    readonly overIn: number;
    readonly upIn: number;
    /** Null: at the bottom of the hole. */
    readonly meetsAtIn: number | null;
  };
}
