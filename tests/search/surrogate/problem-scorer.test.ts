import { beforeAll, describe, expect, test } from 'vitest';
import { DEGREE, from } from '../../../src/base/units.js';
import type { ModelCard } from '../../../src/regression/card.js';
import { BALL_FEATURES, FEATURES } from '../../../src/regression/features.js';
import type { ReactionModel } from '../../../src/regression/reaction-model.js';
import { TARGETS, type TargetId } from '../../../src/regression/targets.js';
import { drilledGrid } from '../../../src/search/candidates/drilled-grid.js';
import {
  type ProblemScorer,
  problemScorer,
  surveyWorlds,
} from '../../../src/search/surrogate/problem-scorer.js';
import { physicsVoice } from '../../../src/search/voices/physics-voice.js';
import type { Trial } from '../../../src/simulate/evaluator.js';
import { type Setting, withSetting } from '../../../src/simulate/setting.js';
import type { Outcome } from '../../../src/simulate/simulator.js';
import { madeUpOutcome } from '../../support/made-up-setting.js';
import { averageBowler, houseLane, plainBall } from '../../support/problems.js';
import { SMALL_BUDGET } from '../../support/small-budget.js';

const SPEED = BALL_FEATURES.length; // the first that belongs to the world
const HOOK = 0.75;
const ENTRY = from(5, DEGREE);

/** Says of each shot that its hook starts at the ball's speed, m, that it hooks to the middle of the lane and enters at 5°: luck alone moves it. */
const model: ReactionModel = {
  arithmetic: 'plain',
  async answer({ dims: [count, width], values }) {
    const answers = new Float32Array(TARGETS.length * count);
    for (let i = 0; i < count; i++)
      TARGETS.forEach(({ id }, j) => {
        const said: Partial<Record<TargetId, number>> = {
          ...{ hookStartFt: values[width * i + SPEED], totalHookBoards: HOOK, entryAngleDeg: ENTRY },
        };
        answers[TARGETS.length * i + j] = said[id] ?? 0;
      });
    return answers;
  },
  basis: async ({ dims: [count] }) => ({
    reaction: new Float32Array(TARGETS.length * count),
    basis: { dims: [count, 1], values: Float32Array.from({ length: count }, (_, i) => i % 3) },
  }),
  close: async () => {},
};
const anywhere = FEATURES.map((feature) => ({ ...feature, least: -1e9, most: 1e9 }));
const outputs = TARGETS.map(({ si }) => ({ si, scale: 1, heldOut: { rmse: 1 } }));
const card = { inputs: anywhere, outputs } as unknown as ModelCard;

const WORLDS = 8;
const SHOTS = 24;
const rounds = [
  { worlds: 2, keep: 5 },
  { worlds: WORLDS, keep: 0 },
];
const budget = {
  ...SMALL_BUDGET,
  cores: 2,
  survey: { ...SMALL_BUDGET.survey, rounds, shotsInWorlds: SHOTS },
};

let setting: Setting;
const trials: Trial[] = [];
const reported: [number, number][] = [];
const layouts = () => drilledGrid(budget.grid.coarse, setting);
/** Every seventh shot is lost. */
const nominal = () =>
  layouts().map((layout, i) => {
    const launch = { ...setting.problem.launch, angle: setting.problem.launch.angle + 1e-5 * i };
    return {
      layout,
      outcome: { ...madeUpOutcome({ shot: i % 7 === 3 ? 'gutter' : 'pins' }), launch } as Outcome,
    };
  });

beforeAll(async () => {
  const inputs = { bowler: averageBowler, ball: plainBall, lane: houseLane, want: {} };
  const options = { seed: 1, workers: 1, pinSide: 'above', budget, models: null } as const;
  await withSetting(inputs, options, async (made) => {
    const evaluate: Setting['evaluator']['evaluate'] = async (asked, onDone) => {
      trials.push(...(asked as readonly Trial[]));
      onDone?.(SHOTS / 3);
      onDone?.((2 * SHOTS) / 3);
      return (asked as readonly Trial[]).map(({ launch }, i) => ({
        ...madeUpOutcome({ shot: i % 6 === 5 ? 'gutter' : 'pins' }),
        launch: launch!,
      }));
    };
    const progress = () => (done: number, total: number) => void reported.push([done, total]);
    setting = { ...made, evaluator: { evaluate }, progress };
  });
});

describe('problemScorer', () => {
  let scorer: ProblemScorer;
  beforeAll(async () => {
    const made = await problemScorer(layouts(), nominal(), setting, { model, card });
    if ('why' in made) throw new Error(made.why.code);
    scorer = made;
  });

  test('rolls layouts in worlds, each pair once, world by world, on the lines of their nominal shots', () => {
    expect(scorer.shots).toBe(SHOTS);
    expect(trials).toHaveLength(SHOTS);
    const worlds = trials.map(({ world }) => world);
    expect(worlds).toEqual([...worlds].sort((a, b) => a - b));
    for (let world = 1; world <= WORLDS; world++)
      expect(worlds.filter((each) => each === world)).toHaveLength(SHOTS / WORLDS);
    const pairs = trials.map(({ world, launch }) => `${world} ${launch!.angle}`);
    expect(new Set(pairs).size).toBe(SHOTS);
    const rolled = nominal();
    for (const { layout, launch } of trials) {
      const [own] = rolled.filter(({ outcome }) => outcome.launch.angle === launch!.angle);
      expect(own.layout.drillingAngleDeg * DEGREE).toBeCloseTo(layout.drillingAngle, 12);
    }
    expect(reported).toEqual([
      [SHOTS / 3, SHOTS],
      [SHOTS, SHOTS],
    ]);
  });

  test('is tuned to those that reached the pins', () => {
    const lost = nominal().filter(({ outcome }) => outcome.shot !== 'pins').length;
    expect(lost).toBeGreaterThan(3);
    expect(scorer.tunedTo).toBe(layouts().length - lost + SHOTS - SHOTS / 6);
  });

  test('moves what is aimed for with luck: what luck does to all alike costs no layout a point', async () => {
    const { speed } = setting.problem.release;
    const target = { wish: 'hookStart', step: null, value: speed, low: speed - 1, high: speed + 1 } as const;
    const scoreIn = scorer.by(physicsVoice([target]));
    for (let world = 0; world < WORLDS; world++) {
      const told: [number, number][] = [];
      await scoreIn(world, Int32Array.of(2, 30, 9), (layout, score) => told.push([layout, score]));
      expect(told.map(([layout]) => layout)).toEqual([2, 30, 9]);
      for (const [, score] of told) expect(score).toBeGreaterThan(99.99);
    }
    expect(setting.problem.luck.some(({ speed }) => Math.abs(speed) > 0.05)).toBe(true);
  });

  test('is none where fewer than nine in ten shots lie where the regression was fitted', async () => {
    const slower = [...anywhere];
    slower[SPEED] = { ...slower[SPEED], least: 0, most: setting.problem.release.speed - 1 };
    const elsewhere = { ...card, inputs: slower };
    const made = await problemScorer(layouts(), nominal(), setting, { model, card: elsewhere });
    expect(made).toEqual({ why: { code: 'outside-what-was-fitted', params: {} } });
  });
});

test('surveyWorlds are those of the last round, as far as there are any', () => {
  const problem = { ...setting.problem, luck: setting.problem.luck.slice(0, 5) };
  const asking = (worlds: number) => ({
    ...budget,
    survey: {
      ...budget.survey,
      rounds: [
        { worlds: 1, keep: 9 },
        { worlds, keep: 0 },
      ],
    },
  });
  expect([2, 5, 9].map((worlds) => surveyWorlds({ problem, budget: asking(worlds) }))).toEqual([2, 5, 5]);
});
