import { driller } from '../ball/drill/drill.js';
import { type InertiaNumbers, inertiaNumbers } from '../ball/drill/drilled-numbers.js';
import type { MassProperties } from '../ball/mass/mass-properties.js';
import { meanBall } from '../ball/mass/mean-ball.js';
import type { Mat3 } from '../math/mat3.js';
import type { BallProblem } from './ball-problem.js';
import { medianNumbers, type RgNumbers } from './median-numbers.js';

/** All possible cores of a ball, drilled in the same way. */
interface DrilledCores {
  readonly all: readonly InertiaNumbers[];
  /** Median of each number separately, as shown beside the band. */
  readonly median: RgNumbers;
  /** The mean of all drilled balls, for numbers that must belong to one ball. */
  mean(): MassProperties;
}

/**
 * Prepares to drill every core of a ball.
 *
 * No single core stands for all: one in the middle of the band at one drilling angle may be at its end at another, and where the choice
 * changed from one core to the next, static weights would jump by a quarter ounce.
 *
 * @returns R_BC, how the core is turned ↦ all cores drilled
 */
export function coresDriller({ bodies, rankingRays, reportRays }: BallProblem): (R_BC: Mat3) => DrilledCores {
  const rays = bodies.length > 1 ? rankingRays : reportRays;
  const drillers = bodies.map((body) => driller(body, rays));
  return (R_BC) => {
    const drilled = drillers.map((drill) => drill(R_BC));
    const all = drilled.map(inertiaNumbers);
    return { all, median: medianNumbers(all), mean: () => meanBall(drilled) };
  };
}
