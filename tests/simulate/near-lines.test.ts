import { beforeAll, describe, expect, test } from 'vitest';
import { ON_TARGET } from '../../src/motion/reaction/re-aim.js';
import { ballProblem } from '../../src/prepare/ball-problem.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import { type Evaluator, localEvaluator, type Trial } from '../../src/simulate/evaluator.js';
import { findLine } from '../../src/simulate/line.js';
import { withNearLines } from '../../src/simulate/near-lines.js';
import { isAtPocket } from '../../src/simulate/pocket.js';
import { type ShotProblem, unaimedProblem } from '../../src/simulate/shot-problem.js';
import type { Outcome } from '../../src/simulate/simulator.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';

const ball = ballProblem(plainBall, averageBowler, 'moment');
const { radius } = ball.published;
const middle = toLayout(MIDDLE_LAYOUT, radius);
const own = (drillingAngleDeg: number, pinToPapIn: number, valAngleDeg: number): Trial => ({
  layout: toLayout({ drillingAngleDeg, pinToPapIn, valAngleDeg }, radius),
  world: 0,
});
const trials = [20, 40, 60, 80].flatMap((angle) =>
  [2, 3, 4, 5, 6].flatMap((pin) => [20, 40, 55, 65].map((val) => own(angle, pin, val))),
);
const other = own(45, 3.375, 33);

describe('layouts rolled on their own lines, from a fit over the first of them', () => {
  let problem: ShotProblem;
  const asked: Trial[][] = [];
  let plain: readonly Outcome[];
  let outcomes: readonly Outcome[];
  let evaluator: Evaluator;
  beforeAll(async () => {
    const unaimed = unaimedProblem(houseLane, averageBowler, plainBall, ball);
    problem = { ...unaimed, launch: findLine(unaimed, middle).launch };
    const local = localEvaluator(problem);
    plain = await local.evaluate(trials);
    evaluator = withNearLines(
      {
        evaluate: (some, onDone) => {
          asked.push([...some] as Trial[]);
          return local.evaluate(some, onDone);
        },
      },
      problem,
    );
    outcomes = await evaluator.evaluate(trials);
  });

  test('all reach the pocket as from the usual line, each in its place in the list', () => {
    for (const [i, { shot, launch, reaction }] of outcomes.entries()) {
      expect(isAtPocket(shot, reaction.pinsX)).toBe(true);
      expect(launch.x).toBe(plain[i].launch.x);
      // both end as near to the target as a line has to; a radian moves these balls by 4 m or more at the pins
      expect(Math.abs(launch.angle - plain[i].launch.angle)).toBeLessThan((2 * ON_TARGET) / 4);
    }
  });

  test('those not fitted start within half of what the usual line is off', () => {
    const [first, rest] = asked;
    expect(first).toHaveLength(60);
    expect(first.every(({ near }) => near === undefined)).toBe(true);
    expect(rest).toHaveLength(20);
    const off = (of: (trial: Trial, angle: number) => number): number =>
      Math.hypot(
        ...rest.map((trial) =>
          of(trial, outcomes[trials.findIndex((t) => t.layout === trial.layout)].launch.angle),
        ),
      );
    const fromFit = off(({ near }, angle) => angle - near!.angle);
    expect(fromFit).toBeLessThan(0.5 * off((_, angle) => angle - problem.launch.angle));
  });

  test('a layout plays the same line whenever it is rolled, and the middle one the problem’s', async () => {
    const again = await evaluator.evaluate([trials[0], trials[1], trials[79], { layout: middle, world: 0 }]);
    expect(again.slice(0, 3)).toEqual([outcomes[0], outcomes[1], outcomes[79]]);
    expect(again[3].launch).toEqual(problem.launch);
  });

  test('few layouts start from the usual line, as does any trial with a line of its own from that', async () => {
    const few = withNearLines(localEvaluator(problem), problem);
    const [alone] = await few.evaluate([other]);
    const [known] = await localEvaluator(problem).evaluate([other]);
    expect(alone).toEqual(known);
    const launch = { ...problem.launch, angle: problem.launch.angle + 0.001 };
    const [given] = await evaluator.evaluate([{ ...other, launch }]);
    expect(given.launch).toEqual(launch);
  });
});
