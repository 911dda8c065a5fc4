import { isDeepStrictEqual } from 'node:util';
import { describe, expect, test } from 'vitest';
import { otherLevers } from '../../src/explain/other-levers.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import type { LeverEffect } from '../../src/records/answers/answer.js';
import { demoShelf } from '../../src/records/read/shelf.js';
import { BELIEFS } from '../../src/records/shared/beliefs.js';
import { withSetting } from '../../src/simulate/setting.js';
import { TINY_BUDGET } from '../support/small-budget.js';

const { bowlers, balls, lanes } = demoShelf();
const byId = <T>(list: readonly { id: string; record: T }[], id: string): T =>
  list.find((each) => each.id === id)!.record;

const budget = { ...TINY_BUDGET, levers: { grits: [500], movesBoards: [4] } };

const other = byId(balls, 'plain-high');

/** Levers for an average bowler's plain ball at 3000 grit, with the usual layout laid down on board 20. */
const leversAt = (practiceWeight: number): Promise<LeverEffect[]> => {
  const inputs = {
    bowler: byId(bowlers, 'average-right'),
    ball: byId(balls, 'plain-medium'),
    lane: byId(lanes, 'house-easy'),
    want: {},
  };
  const options = { seed: 1, workers: 1, pinSide: 'above', budget, practiceWeight } as const;
  return withSetting(inputs, options, async (setting) =>
    otherLevers(inputs, setting, MIDDLE_LAYOUT, 20, [], { others: [other] }),
  );
};

describe('other levers, physics and practice weighed', () => {
  const added = async (from: number, to: number, kind: LeverEffect['kind'], what: object) => {
    const [before, after] = [await leversAt(from), await leversAt(to)].map(
      (levers) =>
        levers.find((each) => each.kind === kind && isDeepStrictEqual(each.change.params, what))!.reaction,
    );
    return (id: 'hookStartFt' | 'sharpnessDegPerFt' | 'totalHookBoards' | 'flareIn' | 'pinsBoard') =>
      after![id] - before![id];
  };

  test('a rougher cover: each belief adds its mean size, by the share of its range in the logarithm of the grit', async () => {
    const add = await added(0, 0.6, 'surface', { grit: 500, insteadOf: 3000 });
    const share = -Math.log(3000 / 500) / Math.log(4000 / 500);
    const mean = 0.6 * 0.5; // the chance that a belief holds, times the middle of its sizes
    const most = (id: string): number => BELIEFS.find((each) => each.id === id)!.most;
    expect(add('hookStartFt')).toBeCloseTo(mean * share * most('finish-later'), 9);
    expect(add('totalHookBoards')).toBeCloseTo(mean * share * most('finish-hooks-less'), 9);
    expect(add('sharpnessDegPerFt')).toBeCloseTo(mean * share * most('finish-sharper'), 9);
    expect(add('flareIn')).toBeCloseTo(0, 9);
    expect(add('pinsBoard')).toBe(0);
  });

  test('another ball: what is believed of its differential and its RG', async () => {
    const add = await added(0, 1, 'ball', { ball: other.name });
    expect(add('flareIn')).toBeGreaterThan(0.02); // its differential is the greater by 0.0115 in before drilling
    expect(add('totalHookBoards')).toBeGreaterThan(0.3);
  });

  test('another line: nothing, since practice believes nothing of it here', async () => {
    const add = await added(0, 1, 'line', { board: 24, insteadOf: 20 });
    for (const id of ['hookStartFt', 'sharpnessDegPerFt', 'totalHookBoards'] as const)
      expect(add(id)).toBeCloseTo(0, 9);
  });
});
