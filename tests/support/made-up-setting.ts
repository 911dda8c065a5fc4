import { DEGREE, INCH, to } from '../../src/base/units.js';
import type { Layout } from '../../src/layout/layout.js';
import { boardToX } from '../../src/motion/lane/boards.js';
import { ballProblem } from '../../src/prepare/ball-problem.js';
import type { Budget } from '../../src/prepare/budget.js';
import { loadRuleSet } from '../../src/records/shared/rules.js';
import { loadPractice } from '../../src/records/shared/shared-data.js';
import type { LayoutNumbers } from '../../src/records/text/layout-text.js';
import type { Trial } from '../../src/simulate/evaluator.js';
import type { Setting } from '../../src/simulate/setting.js';
import type { Outcome } from '../../src/simulate/simulator.js';
import { type MadeUp, outcomeOf } from './outcomes.js';
import { averageBowler, plainBall } from './problems.js';
import { SMALL_BUDGET } from './small-budget.js';

/** What a made-up shot does. @param world  as trials count: 0 the nominal, then those of the problem, then their luck alone */
export type MadeUpShot = (layout: LayoutNumbers, world: number) => MadeUp;

const budget: Budget = { ...SMALL_BUDGET, cores: 1 };
const ball = ballProblem(plainBall, averageBowler, 'moment', undefined, budget);

const POCKET_X = boardToX(17.5);

/** An outcome that may be drilled, at the pocket; made-up numbers besides. */
export function madeUpOutcome(madeUp: MadeUp): Outcome {
  const { reaction, ...rest } = outcomeOf(madeUp);
  const statics = { top: 0, side: 0, finger: 0 };
  const path = { pinsX: POCKET_X, breakpointX: 0.2, turns: 15 };
  return { ...rest, statics, inertia: { mass: 6.8 }, reaction: { ...reaction, ...path } } as Outcome;
}

/** An engine that is made up for a ball of some radius, m, and the trials it was asked for. */
export function madeUpEngine(
  shotOf: MadeUpShot,
  radius: number,
): { readonly evaluator: Setting['evaluator']; readonly trials: Trial[] } {
  const trials: Trial[] = [];
  const numbersOf = ({ drillingAngle, pinToPap, valAngle }: Layout): LayoutNumbers => ({
    drillingAngleDeg: Math.round(to(drillingAngle, DEGREE)),
    pinToPapIn: to(pinToPap * radius, INCH),
    valAngleDeg: Math.round(to(valAngle, DEGREE)),
  });
  const evaluator: Setting['evaluator'] = {
    async evaluate(given, onDone) {
      const asked = given as readonly Trial[];
      trials.push(...asked);
      onDone?.(asked.length);
      return asked.map(({ layout, world, launch = { x: 0, angle: 0.02 } }) => ({
        ...madeUpOutcome(shotOf(numbersOf(layout), world)),
        launch,
      }));
    },
  };
  return { evaluator, trials };
}

/**
 * A setting with a real ball and grip and an engine that is made up, cheap enough to be asked about every layout in every world. It
 * has no regression.
 *
 * @param shotOf  what a layout does
 */
export function madeUpSetting(
  shotOf: MadeUpShot,
  changes: Partial<Setting> = {},
): { readonly setting: Setting; readonly trials: Trial[] } {
  const { evaluator, trials } = madeUpEngine(shotOf, ball.published.radius);
  const setting = {
    ...{ ball, budget, evaluator, seed: 1, practiceWeight: 1, chanceOf: () => 1, sides: ['above'] },
    ...{ practice: loadPractice(), rules: loadRuleSet(undefined), line: { reachesPocket: true } },
    problem: {
      ...{ ball, grit: 2000, launch: { x: -0.1, angle: 0.03 } },
      worlds: Array.from({ length: 1 + budget.worlds }),
      luck: Array.from({ length: budget.worlds }),
    },
    regression: { open: async () => ({ kind: 'unusable', why: { code: 'regression-missing', params: {} } }) },
    progress: () => () => {},
    ...changes,
  } as unknown as Setting;
  return { setting, trials };
}
