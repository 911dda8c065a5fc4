import { inertiaNumbers } from '../../src/ball/drill/drilled-numbers.js';
import { GRAVITY } from '../../src/base/constants.js';
import { DEGREE, FOOT, from, to } from '../../src/base/units.js';
import { dot } from '../../src/math/vec3.js';
import type { Launch } from '../../src/motion/shot/release.js';
import type { Lane } from '../../src/records/schemas/lane.js';
import { NO_DEVIATIONS } from '../../src/simulate/worlds/deviations.js';
import { withSideWeight } from './alterations.js';
import { type Case, rigOf } from './case.js';

/** How far side weight turns the spin axis on the lane before the oil ends. */
export interface Precession {
  /** Axis rotation left at 38 ft with 1 oz of positive side weight less that with 1 oz of negative, degrees. */
  readonly measuredDeg: number;
  /** What m g d/(I ω) would come to by then if the axis stayed where it was in the ball, degrees. */
  readonly closedFormDeg: number;
}

const BEFORE_THE_HOOK = from(38, FOOT);

/** Compares the engine's turn of the axis with the precession of a top under its own weight (any textbook). */
export function precessionStudy(base: Case, lane: Lane, launch: Launch): Precession {
  const [minus, plus] = [-1, 1].map((oz) => {
    const rig = rigOf({ ...base, alter: withSideWeight(oz) }, lane, launch);
    const { time, spin, endAxis_W } = rig.shot(NO_DEVIATIONS, BEFORE_THE_HOOK);
    const { mass, lowRg } = inertiaNumbers(rig.drilled);
    const along = dot(rig.drilled.p_BoBcm_B, rig.problem.ball.pap_B);
    const rate = (mass * GRAVITY * along) / (mass * lowRg ** 2 * spin[0]);
    return {
      rotation: Math.atan2(-endAxis_W[1], -endAxis_W[0]),
      turn: rate * time[time.length - 1],
    };
  });
  return {
    measuredDeg: to(plus.rotation - minus.rotation, DEGREE),
    closedFormDeg: to(plus.turn - minus.turn, DEGREE),
  };
}
