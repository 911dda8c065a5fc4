import { BOARD } from '../../base/constants.js';
import { FOOT } from '../../base/units.js';

/*
 * What an oil pattern's record does not say, assumed for every lane without a source: for those of records and for those that the
 * regression is fitted on.
 */

/** Width over which a zone's edges are smeared, along and across the lane, m. */
export const EDGE_LENGTH = 1.5 * FOOT;
export const EDGE_WIDTH = 0.75 * BOARD;

/** Board of most balls at the pins, from the worn side. */
export const TRACK_PINS_BOARD = 17.5;

/** Distance from the track's middle to where no ball runs, m. */
export const TRACK_HALF_WIDTH = 6 * BOARD;

/** How far past the pattern's end oil is carried, m. */
export const CARRY_LENGTH = 8 * FOOT;
