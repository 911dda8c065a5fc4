import { describe, expect, test } from 'vitest';
import { USUAL_BUDGET } from '../../src/prepare/budget.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import type { LayoutNumbers } from '../../src/records/text/layout-text.js';
import { keyOf } from '../../src/search/candidates/candidates.js';
import type { ScoredCache } from '../../src/search/outcome-cache.js';
import { finals } from '../../src/search/rank.js';
import type { SearchResult } from '../../src/search/search.js';
import type { Setting } from '../../src/simulate/setting.js';
import { layoutAt, outcomeOf, rowOf } from '../support/outcomes.js';

const WORLDS = 40;
const outcome = outcomeOf();

/** A cache whose layouts score what a test says, world by world. */
function fakeCache(scoreIn: (layout: LayoutNumbers, world: number) => number) {
  const met = new Map<string, { layout: LayoutNumbers; scores: number[] }>();
  const worldsOf = ({ layout, scores }: { layout: LayoutNumbers; scores: number[] }) =>
    rowOf(layout, scores).worlds;
  const cache: ScoredCache = {
    async roll(rows, worlds) {
      for (const { layout } of rows) {
        const row = met.get(keyOf(layout)) ?? { layout, scores: [] };
        met.set(keyOf(layout), row);
        for (let world = row.scores.length; world < worlds; world++) row.scores.push(scoreIn(layout, world));
      }
    },
    get(layout) {
      const row = met.get(keyOf(layout));
      return row && worldsOf(row);
    },
    known: () => [...met.values()].map((row) => ({ layout: row.layout, worlds: worldsOf(row) })),
    middle: { layout: MIDDLE_LAYOUT, outcome },
    targets: [],
  };
  return { cache, worldsMet: (layout: LayoutNumbers) => met.get(keyOf(layout))?.scores.length ?? 0 };
}

/** So far apart that all differ. */
const LAYOUTS = Array.from({ length: 12 }, (_, i) =>
  layoutAt(10 + 40 * (i % 3), 2 + (i % 2), 20 + 16 * (i >> 1)),
);
const budget = {
  ...USUAL_BUDGET,
  heats: [{ worlds: 10, least: 2, most: 4, moreThanShown: 1 }],
  final: { least: 1, most: 2 },
};
const setting = {
  budget,
  problem: { luck: Array.from({ length: WORLDS }) },
  progress: () => () => {},
} as unknown as Setting;

const ranking = (expected: readonly number[], cache: ScoredCache) =>
  finals(
    {
      found: LAYOUTS.map((layout, i) => ({ layout, outcome, score: 50, expected: expected[i] })),
      cache,
      surveyed: { why: { code: 'regression-missing', params: {} } },
    } as unknown as SearchResult,
    3,
    setting,
  );
const luck = (world: number): number => 3 * Math.sin(5 * world);

describe('finals', () => {
  const inOrder = LAYOUTS.map((_, i) => 80 - i);

  test('what was expected and holds true goes through: the best that differ meet all worlds, the others do not', async () => {
    const { cache, worldsMet } = fakeCache((layout, world) => 80 - LAYOUTS.indexOf(layout) + luck(world));
    const { rows } = await ranking(inOrder, cache);
    expect(rows.slice(0, 3).map(({ layout }) => layout)).toEqual(LAYOUTS.slice(0, 3));
    for (const { worlds } of rows) expect(worlds.scores).toHaveLength(WORLDS);
    expect(worldsMet(LAYOUTS[11])).toBe(0);
    expect(worldsMet(MIDDLE_LAYOUT)).toBe(WORLDS);
  });

  test('where worlds show that those expected to be best are not, those that should have come further are rolled and listed', async () => {
    // the first four disappoint; the fifth to the seventh hold what was expected of them
    const { cache, worldsMet } = fakeCache((layout, world) => {
      const place = LAYOUTS.indexOf(layout);
      return (place < 4 ? 40 - place : 80 - place) + luck(world);
    });
    const { rows } = await ranking(inOrder, cache);
    expect(rows.slice(0, 3).map(({ layout }) => layout)).toEqual(LAYOUTS.slice(4, 7));
    for (const layout of LAYOUTS.slice(4, 7)) expect(worldsMet(layout)).toBe(WORLDS);
    expect(worldsMet(LAYOUTS[11])).toBe(0);
  });

  test('one that falls back only in the worlds of the final gives its place to the next', async () => {
    const { cache, worldsMet } = fakeCache((layout, world) => {
      const place = LAYOUTS.indexOf(layout);
      return 80 - place + luck(world) - (place === 0 && world >= 10 ? 60 : 0);
    });
    const { rows } = await ranking(inOrder, cache);
    expect(rows.slice(0, 3).map(({ layout }) => layout)).toEqual(LAYOUTS.slice(1, 4));
    expect(worldsMet(LAYOUTS[3])).toBe(WORLDS);
  });

  test('looking again ends, though every one looked at disappoints', async () => {
    const { cache } = fakeCache((_, world) => 10 + luck(world));
    const { rows } = await ranking(inOrder, cache);
    expect(rows.length).toBeGreaterThanOrEqual(3);
    for (const { worlds } of rows) expect(worlds.scores).toHaveLength(WORLDS);
  });
});
