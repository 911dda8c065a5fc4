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
