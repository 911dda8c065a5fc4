import type { LayoutNumbers } from '../records/text/layout-text.js';

/**
 * The usual middle layout, `50 x 4 1/2 x 35`: the middle of the drilling angles the trade drills (10–90°) at
 * a common pin-to-PAP, with the pin above the ring finger and clear of it on most hands (common practice, no
 * source). Every recommendation is compared with it.
 */
export const MIDDLE_LAYOUT: LayoutNumbers = { drillingAngleDeg: 50, pinToPapIn: 4.5, valAngleDeg: 35 };

/** The same as people write it, for help texts, which should load little code. */
export const MIDDLE_LAYOUT_TEXT = '50 x 4 1/2 x 35';
