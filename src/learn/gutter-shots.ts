import { exp } from '../math/exp.js';
import { shareBelow } from '../math/normal.js';
import type { LinearNight } from './linear-log.js';
import type { NightMeans } from './night-means.js';
import { READ } from './readings.js';

/** A ball whose middle is farther out than the lane's edge is in the gutter: half a board outside board 1. */
const EDGE_BOARD = 0.5;

const BREAKPOINT = READ.indexOf('breakpointBoard');

/**
 * The means of a night's readings with those filled in that shots in the gutter have none of: the breakpoint as far out as shots beyond the
 * edge lie on the mean, and what goes with it. Leaving them out would make a bowler who often misses seem
 * to play farther in. One step of expectation and maximisation for censored normal numbers (Dempster, Laird & Rubin, J. R. Statist. Soc.
 * B 39, 1, 1977), repeated with each step of the fit. What is filled in makes no reading surer.
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
  const beyond = middle - deviation * millsRatio((EDGE_BOARD - middle) / deviation);
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

/** How far below its middle a standard normal number lies on the mean where it is less than `edge`. */
function millsRatio(edge: number): number {
  if (edge < -FAR) return -edge; // beyond, the share below is lost in rounding: as good as at the edge
  return exp((-edge * edge) / 2) / Math.sqrt(2 * Math.PI) / shareBelow(edge);
}

const FAR = 4;
