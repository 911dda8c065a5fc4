import { GRAVITY } from '../../src/base/constants.js';
import { memory } from '../../src/motion/kernel/memory.js';
import { writeRotation } from '../../src/motion/kernel/rotation.js';
import { advance, settleStep } from '../../src/motion/kernel/shot-stepper.js';
import { ADVANCE, STATE } from '../../src/motion/kernel/slots.js';
import { beginShot } from '../../src/motion/shot/begin-shot.js';
import { launchState } from '../../src/motion/shot/launch-state.js';
import { type PrincipalBody, principalBody } from '../../src/motion/shot/principal-body.js';
import type { RandomShot } from './random-shots.js';

/** How much the energy of a ball rises on its way. */
interface EnergyRise {
  /** At most over the least it had before, J: friction takes energy while the ball slides and none while it rolls. */
  readonly byStep: number;
  /** At most as a slip that counts as none is set to none, over the ball's momentum, m/s. */
  readonly bySlip: number;
}

const { VX, VY, WX, WY, WZ } = STATE;

/** Follows a shot step by step. */
export function energyRise({ body, release, launch, surface }: RandomShot, step: number): EnergyRise {
  const ball = principalBody(body);
  beginShot(ball, launchState(ball, release, launch), surface, { step, freshSurface: null }, false);
  const { here } = memory;
  let energy = energyOf(ball);
  let least = energy;
  let byStep = 0;
  let bySlip = 0;
  for (;;) {
    const event = advance();
    if (event === ADVANCE.LOST || event === ADVANCE.ARRIVED) return { byStep, bySlip };
    if (event !== ADVANCE.ROLLS) settleStep();
    const before = energy;
    energy = energyOf(ball);
    if (event === ADVANCE.ROLLS) {
      bySlip = Math.max(bySlip, (energy - before) / (ball.mass * Math.hypot(here[VX], here[VY])));
      least += energy - before;
    }
    byStep = Math.max(byStep, energy - least);
    least = Math.min(least, energy);
  }
}

/** ½ m v² + ½ ω·Jω + m g z of the centre of mass, for the ball as it is `here`, J; z from the height of Bo. */
function energyOf({ mass, J, p_BoBcm_P: [a, b, c] }: PrincipalBody): number {
  const { here, trial, R_WP: R } = memory;
  trial.set(here);
  writeRotation();
  const x = R[0] * a + R[1] * b + R[2] * c;
  const y = R[3] * a + R[4] * b + R[5] * c;
  const z = R[6] * a + R[7] * b + R[8] * c;
  const [wx, wy, wz] = [here[WX], here[WY], here[WZ]];
  const vx = here[VX] + wy * z - wz * y;
  const vy = here[VY] + wz * x - wx * z;
  const vz = wx * y - wy * x;
  const turning = J.reduce(
    (sum, moment, i) => sum + moment * (R[i] * wx + R[3 + i] * wy + R[6 + i] * wz) ** 2,
    0,
  );
  return (mass * (vx * vx + vy * vy + vz * vz) + turning) / 2 + mass * GRAVITY * z;
}
