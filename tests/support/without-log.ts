import type { AimErrors } from '../../src/learn/read-aim.js';
import { READING_ERROR } from '../../src/learn/readings.js';
import type { KnownScores } from '../../src/simulate/worlds/draws.js';

/** The prior alone, as in answers without a log. */
export const NOTHING_KNOWN: KnownScores = { coordinates: [], mean: [], lower: [] };

/** Errors with which most bowlers read their aim. */
export const USUAL_AIM_ERRORS: AimErrors = {
  laydownRead: READING_ERROR.laydownBoard.ofNight,
  arrowsRead: READING_ERROR.arrowsBoard.ofNight,
};
