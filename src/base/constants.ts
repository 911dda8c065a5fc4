import { FOOT, INCH } from './units.js';

/** Standard acceleration of gravity, m/s² (BIPM, The International System of Units, 9th ed.). */
export const GRAVITY = 9.80665;

/** Foul line to the head pin's centre, m (60 ft; USBC lane specifications, seen in a copy). */
export const LANE_LENGTH = 60 * FOOT;

/** Boards across the lane (USBC lane specifications, seen in a copy). */
export const BOARD_COUNT = 39;

/** Width of the lane, m (41.5 in; same source). */
export const LANE_WIDTH = 41.5 * INCH;

/** Width of one board, m (41.5 in / 39). */
export const BOARD = LANE_WIDTH / BOARD_COUNT;

/** Where bowlers look when they aim, ft: about the arrows (common practice, no source). */
export const ARROWS_FT = 15;

/** Noses that a lobed core has when nothing more is known, one of them toward the CG mark. Assumed, no source. */
export const USUAL_LOBES = 4;
