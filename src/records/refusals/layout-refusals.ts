import type { Objection } from '../answers/statements/objections.js';
import type { Wish } from '../schemas/reaction-numbers.js';
import type { Mark } from '../text/written-layout.js';

/** Why three arcs are no layout. */
export type ClashInDegrees =
  | { readonly why: 'pin-on-pap' }
  | { readonly why: 'buffer-too-long'; readonly pinBufferDeg: number; readonly pinToPapDeg: number }
  | { readonly why: 'marker-out-of-reach'; readonly pinToMarkerDeg: number; readonly markerToPapDeg: number };

/** Why a layout cannot be on a ball, or none can. */
export interface LayoutRefusals {
  'arcs-clash': {
    readonly ball: string;
    readonly pinToPapIn: number;
    /** Null where a drilling angle was given in its place. */
    readonly markerToPapIn: number | null;
    readonly pinBufferIn: number;
    readonly clash: ClashInDegrees;
  };
  /** The same of a layout that was drilled earlier. */
  'earlier-arcs-clash': {
    /** Path of the layout. */
    readonly field: string;
    /** As it stands in the record. */
    readonly layout: string;
    readonly clash: ClashInDegrees;
  };
  /** A drilling angle to a mark whose place about the pin is not known. */
  'other-mark': { readonly ball: string; readonly given: Mark; readonly wanted: Mark };
  /** A map over drilling angles of a ball without a mark. */
  'no-drilling-angle': { readonly ball: string };
  /** A wish for a step of what layouts attain, where no shot with any of them stays on the lane. */
  'no-step': { readonly wish: Wish; readonly asked: string };
  /** Every layout that was looked at was set aside. */
  'no-layout': {
    /** How many for each reason, most first. */
    readonly rejected: readonly { readonly why: Objection; readonly count: number }[];
  };
}
