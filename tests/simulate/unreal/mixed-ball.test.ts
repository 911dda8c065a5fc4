import { describe, expect, test } from 'vitest';
import { inertiaNumbers } from '../../../src/ball/drill/drilled-numbers.js';
import { reactionNumbers } from '../../../src/motion/reaction/reaction.js';
import { ANSWER_STEP } from '../../../src/motion/shot/answer-step.js';
import { rollShot } from '../../../src/motion/shot/shot.js';
import { ballProblem } from '../../../src/prepare/ball-problem.js';
import { MIDDLE_LAYOUT } from '../../../src/prepare/middle-layout.js';
import { toLayout } from '../../../src/prepare/to-layout.js';
import { localEvaluator } from '../../../src/simulate/evaluator.js';
import { findLine } from '../../../src/simulate/line.js';
import { isAtPocket } from '../../../src/simulate/pocket.js';
import { unaimedProblem } from '../../../src/simulate/shot-problem.js';
import { simulator } from '../../../src/simulate/simulator.js';
import type { MixedBall } from '../../../src/simulate/unreal/mixed-ball.js';
import { NO_DEVIATIONS } from '../../../src/simulate/worlds/deviations.js';
import { averageBowler, houseLane, plainBall } from '../../support/problems.js';

const rough = { ...plainBall, surfaceGrit: 500 };
const ball = ballProblem(rough, averageBowler, 'moment');
const { radius } = ball.published;
const unaimed = unaimedProblem(houseLane, averageBowler, rough, ball);
const [usual, other] = [MIDDLE_LAYOUT, { drillingAngleDeg: 85, pinToPapIn: 2.5, valAngleDeg: 60 }].map(
  (each) => toLayout(each, radius),
);
const problem = { ...unaimed, launch: findLine(unaimed, usual!).launch };
const engine = simulator(problem);
const mixed = (given: Partial<MixedBall> = {}): MixedBall => ({
  centreOf: usual!,
  inertiaOf: usual!,
  carriesOil: true,
  ...given,
});

describe('a ball mixed of two layouts', () => {
  test('of one layout is the ball drilled so, to the last bit', () => {
    for (const layout of [usual!, other!])
      expect(engine.mixed(mixed({ centreOf: layout, inertiaOf: layout }))).toEqual(
        engine.outcome(layout, problem.worlds[0]!),
      );
  });

  test('has the centre of mass of one and the inertia of the other', () => {
    const [a, b] = [usual!, other!].map((layout) => engine.inputs(layout, NO_DEVIATIONS).body);
    const { inertia, statics } = engine.mixed(mixed({ centreOf: other! }));
    expect(inertia).toEqual(inertiaNumbers(a!));
    expect((statics.side * radius) / a!.mass).toBeCloseTo(b!.p_BoBcm_B[0], 12);
    expect((statics.top * radius) / a!.mass).toBeCloseTo(b!.p_BoBcm_B[2], 12);
  });

  test('is aimed anew: each reaches the pocket', async () => {
    const balls = [
      mixed({ centreOf: other! }),
      mixed({ inertiaOf: other! }),
      mixed({ carriesOil: false }),
      mixed({ grit: 2000 }),
    ];
    const outcomes = await localEvaluator(problem).evaluate(balls.map((each) => ({ mixed: each })));
    const launches = new Set(outcomes.map(({ launch }) => launch.angle));
    expect(launches.size).toBe(balls.length);
    for (const { shot, reaction } of outcomes) expect(isAtPocket(shot, reaction.pinsX)).toBe(true);
  });

  test('without oil on its rings rolls as one whose contact keeps no oil', () => {
    const { launch, reaction } = engine.mixed(mixed({ carriesOil: false }));
    const { body, release, surface, freshSurface } = engine.inputs(usual!, NO_DEVIATIONS);
    const dry = { step: ANSWER_STEP, freshSurface: { ...freshSurface, carriedShare: 0 } };
    const ends = [0, Math.PI].map((spinPhase) =>
      reactionNumbers(rollShot(body, { ...release, spinPhase }, launch, surface, dry), radius),
    );
    const mean = (pick: (r: (typeof ends)[number]) => number): number =>
      (pick(ends[0]!) + pick(ends[1]!)) / 2;
    expect(reaction.hookStart).toBeCloseTo(
      mean((r) => r.hookStart),
      9,
    );
    expect(reaction.totalHook).toBeCloseTo(
      mean((r) => r.totalHook),
      9,
    );
    // oil on the rings lets the ball slide farther
    expect(reaction.hookStart).toBeLessThan(engine.mixed(mixed()).reaction.hookStart);
  });

  test('with another finish rolls as a ball that has it', () => {
    const finer = simulator({ ...problem, grit: 2000 });
    const { launch, reaction } = engine.mixed(mixed({ grit: 2000 }));
    expect(reaction).toEqual(finer.outcome(usual!, NO_DEVIATIONS, launch).reaction);
    expect(reaction.hookStart).toBeGreaterThan(engine.mixed(mixed()).reaction.hookStart);
  });
});
