import { exp } from '../math/exp.js';
import { shareBelow } from '../math/normal.js';
import type { LinearNight } from './linear-log.js';
import type { NightMeans } from './night-means.js';
import { READ } from './readings.js';

/** A ball whose centre is beyond the lane's edge, half a board outside the centre of board 1, is in the gutter. */
const EDGE_BOARD = 0.5;

const BREAKPOINT = READ.indexOf('breakpointBoard');

/**
 * Means of a night's readings, with values filled in where shots in the gutter have none: for the breakpoint, the mean of shots beyond
 * the edge, and for other readings what goes with that. Leaving these shots out would make a bowler who often misses seem to play
 * farther in. This is one step of expectation-maximisation for censored normal values (Dempster, Laird & Rubin, J. R. Statist. Soc.
 * B 39, 1, 1977), repeated with each step of the fit. Filled-in values do not reduce the variance of a reading.
 *
 * @returns the means, in the order of the night's readings
 */
export function fillGutters(
  { readings, unread }: NightMeans,
  { means: expected, scattered: { covariance } }: Pick<LinearNight, 'means' | 'scattered'>,
): readonly number[] {
  const means = readings.map(({ mean }) => mean);
  const deviation = Math.sqrt(covariance[BREAKPOINT][BREAKPOINT]);
  if (deviation === 0) return means;
  const middle = expected[BREAKPOINT];
  const beyond = middle - deviation * inverseMillsRatio((EDGE_BOARD - middle) / deviation);
  const withMissing = (place: number, missing: number): number => {
    const { mean, count } = readings[place];
    return (count * mean + unread[place] * missing) / (count + unread[place]);
  };
  return readings.map(({ id, mean }, place) => {
    if (unread[place] === 0) return mean;
    const at = READ.indexOf(id);
    const slope = covariance[at][BREAKPOINT] / deviation ** 2;
    return withMissing(place, expected[at] + slope * (beyond - middle));
  });
}

/**
 * How far below 0 a standard normal number lies on average, given that it is less than `edge`: φ(edge)/Φ(edge), the inverse Mills ratio.
 *
 * Below −`FAR` the edge itself stands for it, up to 5 % too little: gutter balls from so far inside are rare.
 */
function inverseMillsRatio(edge: number): number {
  if (edge < -FAR) return -edge;
  return exp((-edge * edge) / 2) / Math.sqrt(2 * Math.PI) / shareBelow(edge);
}

const FAR = 4;
