import { beforeAll, describe, expect, test } from 'vitest';
import { LANE_LENGTH, LANE_WIDTH } from '../../../src/base/constants.js';
import { shareBelow } from '../../../src/math/normal.js';
import { toLayout } from '../../../src/prepare/to-layout.js';
import type { ModelCard } from '../../../src/regression/card.js';
import { BALL_FEATURES, FEATURES, writeFeatures } from '../../../src/regression/features.js';
import type { ReactionModel, Tuning } from '../../../src/regression/reaction-model.js';
import { TARGETS } from '../../../src/regression/targets.js';
import type { Tensor } from '../../../src/regression/tensor.js';
import { drilledGrid } from '../../../src/search/candidates/drilled-grid.js';
import { layoutLines } from '../../../src/search/surrogate/layout-lines.js';
import { type Known, sharedFeatures, surrogate } from '../../../src/search/surrogate/surrogate.js';
import { worldFeatures } from '../../../src/search/surrogate/world-features.js';
import { type Setting, withSetting } from '../../../src/simulate/setting.js';
import { type Outcome, type Simulator, scatteredLaunch, simulator } from '../../../src/simulate/simulator.js';
import { averageBowler, houseLane, plainBall } from '../../support/problems.js';
import { SMALL_BUDGET } from '../../support/small-budget.js';

const DEPTH = TARGETS.length;
const ERROR = 1.5;
/** What the made-up model says of known shots before it is tuned, times the number's place. */
const UNTUNED = 0.01;
const at = (id: (typeof TARGETS)[number]['id']): number => TARGETS.findIndex((target) => target.id === id);

/** Of a card what is read: scale 2, and an error of held-out shots in the unit of each output. */
const card = {
  outputs: TARGETS.map(({ si }) => ({ si, scale: 2, heldOut: { rmse: ERROR } })),
} as unknown as ModelCard;

/** A made-up model that answers what a test says of a row of features, and keeps what it was asked. */
function madeUpModel(answerOf: (row: Float32Array) => readonly number[]) {
  const asked: { rows: Float32Array[]; tuning: Tuning | undefined }[] = [];
  const model = {
    arithmetic: 'plain',
    async answer({ dims: [count, width], values }, tuning) {
      const rows = Array.from({ length: count }, (_, i) => values.slice(width * i, width * (i + 1)));
      asked.push({ rows, tuning });
      return Float32Array.from(rows.flatMap(answerOf));
    },
    basis: async ({ dims: [count] }: Pick<Tensor, 'dims'>) => ({
      reaction: Float32Array.from({ length: DEPTH * count }, (_, i) => UNTUNED * ((i % DEPTH) + 1)),
      basis: { dims: [count, 2], values: Float32Array.from({ length: 2 * count }, (_, i) => Math.sin(i)) },
    }),
    close: async () => {},
  } satisfies ReactionModel;
  return { model, asked };
}

let setting: Omit<Setting, 'evaluator' | 'regression'>;
let engine: Simulator;
beforeAll(async () => {
  const inputs = { bowler: averageBowler, ball: plainBall, lane: houseLane, want: {} };
  const budget = { ...SMALL_BUDGET, cores: 2, worlds: 4 };
  const options = { seed: 1, workers: 1, pinSide: 'above', budget, models: null } as const;
  await withSetting(inputs, options, async (made) => {
    setting = made;
    engine = simulator(made.problem);
  });
});

/** Layouts of a grid, each on a line of its own, with shots of physics that the model is tuned to. */
function ready() {
  const { problem } = setting;
  const layouts = drilledGrid(SMALL_BUDGET.grid.coarse, setting).map((layout) =>
    toLayout(layout, problem.ball.published.radius),
  );
  const nominal = layouts.map((layout) => ({
    layout,
    outcome: {
      launch: { ...problem.launch, angle: problem.launch.angle + 0.002 * layout.valAngle },
    } as Outcome,
  }));
  const lines = layoutLines(nominal, layouts, 60, problem.ball.pap_B);
  return { problem, layouts, nominal, lines, worlds: worldFeatures(problem.launch.x, lines.angles) };
}

/** Shots of physics that are off from 0, number by number, by half as much as a test says and half as much again in turns. */
const knownOff = (count: number, mean: number): Known[] =>
  Array.from({ length: count }, (_, i) => mean * (i % 2 === 0 ? 0.5 : 1.5)).map((off) => ({
    layout: toLayout({ drillingAngleDeg: 50, pinToPapIn: 4, valAngleDeg: 40 }, 0.1),
    deviations: setting.problem.worlds[0],
    outcome: {
      launch: { x: 0.1, angle: 0 },
      reaction: {
        ...{ hookStart: off, sharpness: 2 * off, totalHook: 3 * off, entryAngle: 4 * off, flare: 5 * off },
        ...{ breakpointX: 6 * off + 0.1, rollStart: 7 * off, turns: 8 * off },
      },
    } as Outcome,
  }));

async function opened(answerOf: (row: Float32Array) => readonly number[], known = knownOff(6, 0)) {
  const { problem, layouts, nominal, lines, worlds } = ready();
  const { model, asked } = madeUpModel(answerOf);
  const features = { dims: [known.length, 1], values: new Float32Array(known.length) };
  const made = await surrogate(model, card, problem, engine, known, features, worlds, lines);
  return { made, asked, problem, layouts, nominal, lines, worlds };
}

const nothing = (): readonly number[] => TARGETS.map(() => 0);
const saying = (said: Partial<Record<(typeof TARGETS)[number]['id'], number>>) => () =>
  TARGETS.map(({ id }) => said[id] ?? 0);

describe('features of a problem', () => {
  test('of single shots are those of the shots, whether they share what belongs to a world or not', async () => {
    const { made, asked, problem, layouts, worlds } = await opened(nothing);
    const shots = [0, 1, 3].map((world) => ({
      layout: layouts[7 * world],
      deviations: problem.worlds[world],
      launch: { x: problem.launch.x + 0.02, angle: problem.launch.angle + 0.003 * world },
    }));
    await made.answer(shots);
    const shared = sharedFeatures(shots, engine, worlds);
    expect(shared.dims).toEqual([3, FEATURES.length]);
    const { rows } = asked[0];
    shots.forEach(({ layout, deviations, launch }, i) => {
      const want = new Float32Array(FEATURES.length);
      const inputs = engine.inputs(layout, deviations);
      writeFeatures(want, 0, { ...inputs, launch: scatteredLaunch(launch, deviations) });
      expect(rows[i]).toEqual(want);
      expect(shared.values.slice(FEATURES.length * i, FEATURES.length * (i + 1))).toEqual(want);
    });
  });

  test('of all layouts in a world are near those of each, drilled by itself on its own line', async () => {
    const { made, asked, problem, layouts, lines } = await opened(nothing);
    for (const deviations of [problem.worlds[0], problem.worlds[2], problem.worlds[4]]) {
      const which = Int32Array.from([0, 5, 11, 23, 40]);
      await made.inWorld(deviations, which, () => {});
      const { rows } = asked.at(-1)!;
      which.forEach((place, i) => {
        const want = new Float32Array(FEATURES.length);
        const launch = scatteredLaunch({ x: problem.launch.x, angle: lines.angles[place] }, deviations);
        writeFeatures(want, 0, { ...engine.inputs(layouts[place], deviations), launch });
        want.forEach((value, j) => {
          // a ball is fitted over layouts: to 2e-5 of m R²; what is told of the world follows parabolas
          const room = j < BALL_FEATURES.length ? 1e-4 : 0.02 * Math.max(0.2, Math.abs(value));
          expect(Math.abs(rows[i][j] - value), FEATURES[j].name).toBeLessThan(room);
        });
      });
    }
  });
});

describe('answers', () => {
  test('of more layouts than go into one question come one after the other, each layout’s own', async () => {
    const { made, asked, problem, layouts } = await opened((row) => {
      const answers = [...nothing()];
      answers[at('hookStartFt')] = row[BALL_FEATURES.length - 1];
      return answers;
    });
    const which = Int32Array.from({ length: 2100 }, (_, i) => (7 * i) % layouts.length);
    const told: [number, number][] = [];
    await made.inWorld(problem.worlds[1], which, (layout, { reaction }) => {
      told.push([layout, reaction.hookStart]);
    });
    expect(asked.map(({ rows }) => rows.length)).toEqual([1024, 1024, 52]);
    expect(told.map(([layout]) => layout)).toEqual([...which]);
    const first = new Map<number, number>();
    for (const [layout, said] of told) {
      expect(said).toBe(first.get(layout) ?? said);
      first.set(layout, said);
    }
    expect(new Set(first.values()).size).toBeGreaterThan(5);
  });

  test('are read number by number', async () => {
    const { made, problem, layouts } = await opened(
      saying({
        hookStartFt: 11,
        sharpnessDegPerFt: 0.02,
        totalHookBoards: 0.5,
        entryAngleDeg: 0.08,
        rollStartFt: 99,
      }),
    );
    const shot = {
      layout: layouts[0],
      deviations: problem.worlds[0],
      launch: { x: 0, angle: 0.5 / LANE_LENGTH },
    };
    const [{ shot: ended, reaction }] = await made.answer([shot]);
    expect(ended).toBe('pins');
    const want = { hookStart: 11, sharpness: 0.02, totalHook: 0.5, entryAngle: 0.08 };
    for (const [name, value] of Object.entries(want))
      expect(reaction[name as keyof typeof want]).toBeCloseTo(value, 6);
  });

  test.each([
    { beyond: -0.01, shot: 'pins' },
    { beyond: 0.01, shot: 'gutter' },
  ] as const)(
    '$beyond m beyond the edge of the lane at the pins, on either side, a ball ends: $shot',
    async ({ beyond, shot }) => {
      for (const side of [-1, 1]) {
        const hook = 0.3;
        const { made, problem, layouts } = await opened(saying({ totalHookBoards: hook }));
        const deviations = { ...problem.worlds[0], launchAngle: 0.001 };
        const angle = Math.atan((side * (LANE_WIDTH / 2 + beyond) + hook - 0.1) / LANE_LENGTH) - 0.001;
        const [{ shot: ended }] = await made.answer([
          { layout: layouts[0], deviations, launch: { x: 0.1, angle } },
        ]);
        expect(ended).toBe(shot);
      }
    },
  );

  test('tell the chance to stay on the lane by how far out the ball goes and what that errs by', async () => {
    const { si } = TARGETS[at('breakpointFromLaydown')];
    for (const errors of [-2, -1, 0, 1, 2]) {
      const { problem: given } = ready();
      const outmost = LANE_WIDTH / 2 + errors * ERROR * si;
      const { made, problem } = await opened(saying({ breakpointFromLaydown: outmost - given.launch.x }));
      let chance = Number.NaN;
      await made.inWorld(problem.worlds[0], Int32Array.of(3), (_layout, _reached, told) => {
        chance = told;
      });
      expect(Math.abs(chance - shareBelow(-errors))).toBeLessThan(0.01);
      if (errors === 0) expect(chance).toBeCloseTo(0.5, 5);
    }
  });

  test('are tuned to what physics rolled: a miss that all shots share is taken out, in scales of the outputs', async () => {
    const { made, asked, problem, layouts } = await opened(nothing, knownOff(8, 0.1));
    await made.answer([{ layout: layouts[0], deviations: problem.worlds[0], launch: problem.launch }]);
    const { bias, weights } = asked[0].tuning!;
    const { basis } = await madeUpModel(nothing).model.basis({ dims: [8, 1] });
    const means = [0, 1].map((j) =>
      basis.values.reduce((sum, each, i) => sum + (i % 2 === j ? each / 8 : 0), 0),
    );
    for (let j = 0; j < DEPTH; j++) {
      const atMean = bias.values[j] + means[0] * weights.values[j] + means[1] * weights.values[DEPTH + j];
      expect(atMean, TARGETS[j].id).toBeCloseTo(((j + 1) * (0.1 - UNTUNED)) / 2, 6);
    }
  });
});

describe('layoutLines', () => {
  test('go through the lines that physics found, and lie between them for others', () => {
    const { problem, layouts } = ready();
    const angleOf = (layout: (typeof layouts)[number]): number => 0.03 + 0.004 * Math.cos(layout.pinToPap);
    const nominal = layouts.map((layout) => ({
      layout,
      outcome: { launch: { x: 0, angle: angleOf(layout) } } as Outcome,
    }));
    const others = layouts.map((layout) => ({ ...layout, pinToPap: layout.pinToPap - 0.03 }));
    const { angles } = layoutLines(nominal, others, 40, problem.ball.pap_B);
    const found = nominal.map(({ outcome }) => outcome.launch.angle);
    others.forEach((layout, i) => {
      const within = Math.min(Math.max(...found), Math.max(Math.min(...found), angleOf(layout)));
      expect(Math.abs(angles[i] - within)).toBeLessThan(1e-6); // linear in the basis
    });
  });

  test('keep within the angles that physics found, however far from its layouts', () => {
    const { problem, layouts, nominal } = ready();
    const few = nominal.filter(({ layout }) => layout.drillingAngle < 0.6);
    const { angles } = layoutLines(few, layouts, 60, problem.ball.pap_B);
    const found = few.map(({ outcome }) => outcome.launch.angle);
    for (const angle of angles) {
      expect(angle).toBeGreaterThanOrEqual(Math.min(...found));
      expect(angle).toBeLessThanOrEqual(Math.max(...found));
    }
  });

  test('go through layouts that lie evenly over those known, all where they are few', () => {
    const { problem, layouts, nominal } = ready();
    const sampleOf = (known: number) =>
      layoutLines(nominal.slice(0, known), layouts, 20, problem.ball.pap_B).sample;
    expect(sampleOf(40)).toEqual(Array.from({ length: 20 }, (_, i) => layouts[2 * i]));
    expect(sampleOf(12)).toEqual(layouts.slice(0, 12));
  });
});
