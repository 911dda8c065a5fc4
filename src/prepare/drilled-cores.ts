import { driller } from '../ball/drill/drill.js';
import { type InertiaNumbers, inertiaNumbers } from '../ball/drill/drilled-numbers.js';
import type { MassProperties } from '../ball/mass/mass-properties.js';
import type { Mat3 } from '../math/mat3.js';
import type { BallProblem } from './ball-problem.js';
import { medianNumbers, numbersApart, type RgNumbers } from './median-numbers.js';

/** What all cores that stand for a ball's come to, drilled alike. */
export interface DrilledCores {
  readonly all: readonly InertiaNumbers[];
  /** Median of each number by itself: what is shown, beside the band. */
  readonly median: RgNumbers;
  /** The drilled ball of the core nearest to the medians, which gives what must come from one ball; drilled finely when it is asked for. */
  nearest(): MassProperties;
}

/**
 * Prepares to drill every core of a ball. Which of them is typical depends on the layout: a core in the middle of
 * the band at one drilling angle may be at its end at another.
 *
 * @returns how the core is turned ↦ the cores drilled so
 */
export function coresDriller({ bodies, rankingRays, reportRays }: BallProblem): (R_BC: Mat3) => DrilledCores {
  const rays = bodies.length > 1 ? rankingRays : reportRays;
  const drillers = bodies.map((body) => driller(body, rays));
  return (R_BC) => {
    const all = drillers.map((drill) => inertiaNumbers(drill(R_BC)));
    const median = medianNumbers(all);
    const nearest = (): MassProperties => {
      const place = all.reduce(
        (best, each, i) => (numbersApart(each, median) < numbersApart(all[best], median) ? i : best),
        0,
      );
      return driller(bodies[place], reportRays)(R_BC);
    };
    return { all, median, nearest };
  };
}
