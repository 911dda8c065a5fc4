import { driller } from '../ball/drill/drill.js';
import { type InertiaNumbers, inertiaNumbers } from '../ball/drill/drilled-numbers.js';
import type { MassProperties } from '../ball/mass/mass-properties.js';
import type { Mat3 } from '../math/mat3.js';
import type { BallProblem } from './ball-problem.js';
import { medianNumbers, numbersApart, type RgNumbers } from './median-numbers.js';

/** All possible cores of a ball, drilled in the same way. */
export interface DrilledCores {
  readonly all: readonly InertiaNumbers[];
  /** Median of each number separately, as shown beside the band. */
  readonly median: RgNumbers;
  /** The drilled ball of the core nearest to the medians, for numbers that must belong to one ball; drilled with fine rays when first asked for. */
  nearest(): MassProperties;
}

/**
 * Prepares to drill every core of a ball. Which core is typical depends on the layout: one in the middle of
 * the band at one drilling angle may be at its end at another.
 *
 * @returns R_BC, how the core is turned ↦ all cores drilled
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
