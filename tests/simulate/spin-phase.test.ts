import { mean, standardDeviation } from 'simple-statistics';
import { expect, test } from 'vitest';
import { BOARD } from '../../src/base/constants.js';
import { norm, scale } from '../../src/math/vec3.js';
import { hookOf } from '../../src/motion/reaction/hook.js';
import { ANSWER_STEP } from '../../src/motion/shot/answer-step.js';
import { rollShot } from '../../src/motion/shot/shot.js';
import { ballProblem } from '../../src/prepare/ball-problem.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import { demoShelf } from '../../src/records/read/shelf.js';
import { findLine } from '../../src/simulate/line.js';
import { unaimedProblem } from '../../src/simulate/shot-problem.js';
import { simulator } from '../../src/simulate/simulator.js';
import { NO_DEVIATIONS } from '../../src/simulate/worlds/deviations.js';

const { bowlers, balls, lanes } = demoShelf();
const pick = <T>(list: readonly { id: string; record: T }[], id: string): T =>
  list.find((each) => each.id === id)!.record;
const lane = pick(lanes, 'house-easy');
const PHASES = Array.from({ length: 12 }, (_, i) => (2 * Math.PI * i) / 12);

test.each([
  ['average-right', 'plain-medium', 50, 4.5, 20],
  ['average-right', 'plain-medium', 70, 3, 35],
  ['average-right', 'asymmetric-strong', 50, 4.5, 70],
  ['average-right', 'asymmetric-strong', 20, 5, 50],
  ['two-handed', 'plain-medium', 50, 4.5, 70],
  ['two-handed', 'plain-medium', 70, 3, 35],
  ['rev-dominant', 'asymmetric-strong', 20, 5, 50],
] as const)(
  '%s, %s, %d x %f x %d: the spin phase moves total hook by less than 0.15 board with the centre of mass 1 mm off, and two phases half a turn apart give its mean',
  (bowlerId, ballId, drillingAngleDeg, pinToPapIn, valAngleDeg) => {
    const bowler = pick(bowlers, bowlerId);
    const record = pick(balls, ballId);
    const ball = ballProblem(record, bowler, 'moment');
    const problem = unaimedProblem(lane, bowler, record, ball);
    const layout = toLayout({ drillingAngleDeg, pinToPapIn, valAngleDeg }, ball.published.radius);
    const { launch } = findLine(problem, layout);
    const { body, release, surface, freshSurface } = simulator(problem).inputs(layout, NO_DEVIATIONS);
    const off = { ...body, p_BoBcm_B: scale(0.001 / norm(body.p_BoBcm_B), body.p_BoBcm_B) };
    const hooks = PHASES.map((spinPhase) => {
      const settings = { step: ANSWER_STEP, freshSurface, halfWidth: Number.POSITIVE_INFINITY };
      const shot = rollShot(off, { ...release, spinPhase }, launch, surface, settings);
      return hookOf(shot).total / BOARD;
    });
    expect(standardDeviation(hooks)).toBeLessThan(0.15);
    for (let i = 0; i < 6; i++)
      expect(Math.abs((hooks[i] + hooks[i + 6]) / 2 - mean(hooks))).toBeLessThan(0.1);
  },
);
