import { expect, test } from 'vitest';
import { FOOT } from '../../src/base/units.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import { demoShelf, type Shelved } from '../../src/records/read/shelf.js';
import type { Want } from '../../src/records/schemas/want.js';
import { firstLook } from '../../src/search/first-look.js';
import { type Setting, withSetting } from '../../src/simulate/setting.js';
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
