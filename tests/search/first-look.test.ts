import { describe, expect, test } from 'vitest';
import { LANE_LENGTH } from '../../src/base/constants.js';
import { FOOT } from '../../src/base/units.js';
import { boardToX } from '../../src/motion/lane/boards.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import { demoShelf, type Shelved } from '../../src/records/read/shelf.js';
import type { Want } from '../../src/records/schemas/want.js';
import type { ModelCard } from '../../src/regression/card.js';
import { FEATURES, writeFeatures } from '../../src/regression/features.js';
import type { ReactionModel } from '../../src/regression/reaction-model.js';
import { TARGETS } from '../../src/regression/targets.js';
import type { Tensor } from '../../src/regression/tensor.js';
import { rejectByMarks } from '../../src/search/candidates/constraints.js';
import { drilledGrid } from '../../src/search/candidates/drilled-grid.js';
import { firstLook } from '../../src/search/first-look.js';
import { type Setting, withSetting } from '../../src/simulate/setting.js';
import { simulator } from '../../src/simulate/simulator.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';
import { SMALL_BUDGET } from '../support/small-budget.js';

/** Looks and makes sure that nothing was rolled in the evaluator for it. */
async function looked(
  want: Want,
  use: (look: Awaited<ReturnType<typeof firstLook>>, setting: Setting) => Promise<void> | void,
  given = { bowler: averageBowler, ball: plainBall, lane: houseLane },
) {
  const inputs = { ...given, want };
  const options = { seed: 1, workers: 1, pinSide: 'above', budget: SMALL_BUDGET } as const;
  await withSetting(inputs, options, async (setting) => {
    const regression = await setting.regression.glance();
    if (regression.kind === 'unusable') throw new Error(regression.why.code);
    const evaluate = () => {
      throw new Error('a first look rolls nothing');
    };
    const evaluator = { ...setting.evaluator, evaluate };
    await use(await firstLook(want, { ...setting, evaluator }, regression), setting);
  });
}

test('firstLook: what it says of the hook is what physics rolls with that layout, to a foot', async () => {
  const shelf = demoShelf();
  const record = <T>(list: readonly Shelved<T>[], id: string): T =>
    list.find((each) => each.id === id)!.record;
  const cases = [
    ['average-right', 'plain-medium', 'house-easy'],
    ['high-tilt', 'asymmetric-strong', 'long'],
    ['slow-straight', 'plain-high', 'house-easy'],
  ] as const;
  for (const [bowler, ball, lane] of cases) {
    const given = {
      bowler: record(shelf.bowlers, bowler),
      ball: record(shelf.balls, ball),
      lane: record(shelf.lanes, lane),
    };
    await looked(
      { hookStart: 4 },
      async (look, { ball: { published }, evaluator }) => {
        const layout = toLayout(look!.layout, published.radius);
        const [{ shot, reaction }] = await evaluator.evaluate([{ layout, world: 0 }]);
        expect(shot).toBe('pins');
        expect(Math.abs(look!.hookStart - reaction.hookStart), bowler).toBeLessThan(FOOT);
      },
      given,
    );
  }
});

test('firstLook: who wants it late is shown a later one than who wants it early', async () => {
  const starts: number[] = [];
  for (const hookStart of [1, 5] as const)
    await looked({ hookStart }, (look) => void starts.push(look!.hookStart));
  expect(starts[1]).toBeGreaterThan(starts[0]);
});

test('firstLook: without a wish there is nothing to look for', () =>
  looked({}, (look) => expect(look).toBeNull()));

test('firstLook: outside what the regression was fitted on it says nothing', async () => {
  const inputs = { bowler: averageBowler, ball: plainBall, lane: houseLane, want: { hookStart: 4 } };
  const options = { seed: 1, workers: 1, pinSide: 'above', budget: SMALL_BUDGET } as const;
  await withSetting(inputs, options, async (setting) => {
    const regression = await setting.regression.glance();
    if (regression.kind === 'unusable') throw new Error(regression.why.code);
    const { model, card } = regression;
    const elsewhere = {
      ...card,
      inputs: card.inputs.map((input) => ({ ...input, least: input.most + 1, most: input.most + 2 })),
    };
    expect(await firstLook(inputs.want, setting, { model, card: elsewhere })).toBeNull();
    expect(await firstLook(inputs.want, setting, { model, card })).not.toBeNull();
  });
});

describe('firstLook, by a made-up model', () => {
  const inputs = { bowler: averageBowler, ball: plainBall, lane: houseLane, want: { hookStart: 5 } } as const;
  const options = {
    seed: 1,
    workers: 1,
    pinSide: 'above',
    budget: { ...SMALL_BUDGET, cores: 2 },
    models: null,
  } as const;
  const card = {
    inputs: FEATURES.map((feature) => ({ ...feature, least: -1e9, most: 1e9 })),
  } as unknown as ModelCard;

  /** Says the hook (m) and where it starts (m) of each layout in each of three directions. */
  const saying = (
    hookOf: (layout: number, turn: number) => number,
    startOf: (layout: number, turn: number) => number,
  ) => {
    const rows: Float32Array[] = [];
    const model = {
      async answer({ dims: [count, width], values }: Tensor) {
        const answers = new Float32Array(TARGETS.length * count);
        for (let i = 0; i < count; i++) {
          rows.push(values.slice(width * i, width * (i + 1)));
          const [layout, turn] = [Math.floor(i / 3), i % 3];
          TARGETS.forEach(({ id }, j) => {
            const said = {
              hookStartFt: startOf(layout, turn),
              totalHookBoards: hookOf(layout, turn),
              entryAngleDeg: 0.09,
            };
            answers[TARGETS.length * i + j] = id in said ? said[id as keyof typeof said] : 0;
          });
        }
        return answers;
      },
    } as unknown as ReactionModel;
    return { model, rows };
  };

  test('asks about layouts that may be marked, as the engine has them, in three directions each', () =>
    withSetting(inputs, options, async (setting) => {
      const { model, rows } = saying(
        () => 0.7,
        () => 11,
      );
      await firstLook(inputs.want, setting, { model, card });
      const layouts = markable(setting);
      expect(rows).toHaveLength(3 * layouts.length);
      const engine = simulator(setting.problem);
      for (const [place, turn] of [
        [0, 0],
        [4, 1],
        [9, 2],
      ]) {
        const { launch } = setting.line;
        const shot = {
          ...engine.inputs(
            toLayout(layouts[place], setting.ball.published.radius),
            setting.problem.worlds[0],
          ),
          launch: { ...launch, angle: launch.angle + 0.012 * (turn - 1) },
        };
        const want = new Float32Array(FEATURES.length);
        writeFeatures(want, 0, shot);
        expect(rows[3 * place + turn]).toEqual(want);
      }
    }));

  test('takes the layout that starts latest on the line to the pocket, between the directions asked about or at their ends', () =>
    withSetting(inputs, options, async (setting) => {
      const { x, angle } = setting.line.launch;
      const endAt = (by: number): number => x + LANE_LENGTH * Math.tan(angle + by) - boardToX(17.5); // beyond the pocket, without hook
      // as long a hook as brings it to the pocket when turned by so much
      const cases = [
        { by: -0.006, starts: [10, 12, 99], want: 11 },
        { by: 0.006, starts: [99, 12, 16], want: 14 },
        { by: -0.003, starts: [10, 14, 99], want: 13 },
        { by: 0.05, starts: [99, 98, 16], want: 16 }, // not brought there by any
        { by: -0.05, starts: [15, 98, 99], want: 15 },
      ];
      for (const { by, starts, want } of cases) {
        for (const best of [0, 7]) {
          // others start a little earlier in every direction
          const { model } = saying(
            () => endAt(by),
            (layout, turn) => starts[turn] - (layout === best ? 0 : 0.5 + layout / 1000),
          );
          const look = await firstLook(inputs.want, setting, { model, card });
          expect(Math.abs(look!.hookStart - want)).toBeLessThan(0.002); // of a tangent that bends a little
          expect(look!.layout).toEqual(markable(setting)[best]);
        }
      }
    }));

  test('reads between the two directions that pass the pocket on either side, however far off the others are', () =>
    withSetting(inputs, options, async (setting) => {
      const { x, angle } = setting.line.launch;
      const straight = [-0.012, 0, 0.012].map(
        (by) => x + LANE_LENGTH * Math.tan(angle + by) - boardToX(17.5),
      );
      for (const { beyond, want } of [
        { beyond: [-0.3, 0.1, 0.2], want: 10 + 0.75 * 2 },
        { beyond: [-0.02, -0.01, 0.03], want: 12 + 0.25 * 4 },
      ]) {
        const { model } = saying(
          (_layout, turn) => straight[turn] - beyond[turn],
          (_layout, turn) => [10, 12, 16][turn],
        );
        const look = await firstLook(inputs.want, setting, { model, card });
        expect(look!.hookStart).toBeCloseTo(want, 4);
      }
    }));

  test('says nothing where no line reaches the pocket, or no layout may be marked', () =>
    withSetting(inputs, options, async (setting) => {
      const { model } = saying(
        () => 0.7,
        () => 11,
      );
      const look = (changes: Partial<Setting>) =>
        firstLook(inputs.want, { ...setting, ...changes }, { model, card });
      expect(await look({})).not.toBeNull();
      expect(await look({ line: { ...setting.line, reachesPocket: false } })).toBeNull();
      expect(await look({ practice: { ...setting.practice, leastPinToHoleIn: 99 } })).toBeNull();
    }));
});

const markable = (setting: Setting) =>
  drilledGrid(setting.budget.grid.coarse, setting).filter(
    (layout) => rejectByMarks(layout, setting.ball, setting.practice) === null,
  );
