import { expect, test } from 'vitest';
import { GRAVITY } from '../../src/base/constants.js';
import { cross, dot, norm, type Vec3 } from '../../src/math/vec3.js';
import { memory } from '../../src/motion/kernel/memory.js';
import { writeRotation } from '../../src/motion/kernel/rotation.js';
import { advance, settleStep } from '../../src/motion/kernel/shot-stepper.js';
import { ADVANCE, STATE } from '../../src/motion/kernel/slots.js';
import { uniformLane } from '../../src/motion/lane/surface.js';
import { beginShot } from '../../src/motion/shot/begin-shot.js';
import { launchState } from '../../src/motion/shot/launch-state.js';
import { principalBody } from '../../src/motion/shot/principal-body.js';
import { randomShots } from '../support/random-shots.js';

const { VX, VY, WX, WY, WZ } = STATE;

/**
 * How much the energy of a ball rises on its way at most, J: ½ m v² + ½ ω·Jω + m g d_z of its centre of mass. Friction takes
 * energy while the ball slides and none while it rolls, so any rise is the step's.
 */
function greatestRise(
  { body, release, launch, surface }: ReturnType<typeof randomShots>[number],
  step: number,
): number {
  const ball = principalBody(body);
  beginShot(ball, launchState(ball, release, launch), surface, { step, freshSurface: null }, false);
  const { here: state, trial, R_WP: R } = memory;
  const energy = (): number => {
    trial.set(state);
    writeRotation();
    const row = (i: number): Vec3 => [R[3 * i], R[3 * i + 1], R[3 * i + 2]];
    const column = (i: number): Vec3 => [R[i], R[3 + i], R[6 + i]];
    const w_W: Vec3 = [state[WX], state[WY], state[WZ]];
    const d_W: Vec3 = [0, 1, 2].map((i) => dot(row(i), ball.p_BoBcm_P)) as unknown as Vec3;
    const swing = cross(w_W, d_W);
    const v: Vec3 = [state[VX] + swing[0], state[VY] + swing[1], swing[2]];
    const w_P = [0, 1, 2].map((i) => dot(column(i), w_W));
    const turning = w_P.reduce((sum, w, i) => sum + ball.J[i] * w * w, 0);
    return (ball.mass * norm(v) ** 2 + turning) / 2 + ball.mass * GRAVITY * d_W[2];
  };
  let least = energy();
  let rise = 0;
  for (let i = 0; i < 20_000; i++) {
    const event = advance();
    if (event === ADVANCE.LOST || event === ADVANCE.ARRIVED) break;
    if (event !== ADVANCE.ROLLS) settleStep();
    const now = energy();
    rise = Math.max(rise, now - least);
    least = Math.min(least, now);
  }
  return rise;
}

test.each([
  { name: 'on an oil pattern', frictionOf: null },
  { name: 'on hardly any friction', frictionOf: 0.005 },
])(
  'random shots $name: energy rises by no more than the step errs, which a finer one shows',
  ({ frictionOf }) => {
    const shots = randomShots(40).map((shot) =>
      frictionOf === null ? shot : { ...shot, surface: uniformLane(frictionOf) },
    );
    const [coarse, fine] = [0.008, 0.002].map((step) => shots.map((shot) => greatestRise(shot, step)));
    const worst = (rises: readonly number[]): number => Math.max(...rises);
    // of some 300 J; the step's error falls with its fourth power, to a 256th
    expect(worst(coarse)).toBeLessThan(0.01);
    expect(worst(fine)).toBeLessThan(Math.max(1e-6, worst(coarse) / 50));
  },
);
