import { describe, expect, test } from 'vitest';
import { USUAL_BUDGET } from '../../src/prepare/budget.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import type { LayoutNumbers } from '../../src/records/text/layout-text.js';
import { keyOf } from '../../src/search/candidates/candidates.js';
import type { OrderRules } from '../../src/search/order.js';
import type { ScoredCache } from '../../src/search/outcome-cache.js';
import type { SearchResult } from '../../src/search/race.js';
import { finals, rankInWorlds } from '../../src/search/rank.js';
import { simulateLayouts } from '../../src/search/simulate-layouts.js';
import type { Setting } from '../../src/simulate/setting.js';
import { madeUpOutcome, madeUpSetting } from '../support/made-up-setting.js';
import { layoutAt, outcomeOf, rowOf } from '../support/outcomes.js';

const WORLDS = 40;
const outcome = outcomeOf();

/** A cache whose layouts score what a test says, world by world. */
function fakeCache(scoreIn: (layout: LayoutNumbers, world: number) => number | null) {
  const met = new Map<string, { layout: LayoutNumbers; scores: (number | null)[] }>();
  const worldsOf = ({ layout, scores }: { layout: LayoutNumbers; scores: (number | null)[] }) =>
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
    middleArrives: Array.from({ length: WORLDS }, () => true),
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

const resultOf = (expected: readonly number[], cache: ScoredCache) =>
  ({
    found: LAYOUTS.map((layout, i) => ({ layout, outcome, score: 50, expected: expected[i] })),
    cache,
    surveyed: { why: { code: 'regression-missing', params: {} } },
  }) as unknown as SearchResult;
const ranking = (expected: readonly number[], cache: ScoredCache) =>
  finals(resultOf(expected, cache), 3, setting);
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

  test('what finds the gutter more often than the usual gives its place to what does not, rolled for that', async () => {
    // the first six are ahead, but one ball in five of theirs is lost; they swing farther out, which the seventh and eighth do not
    const isWide = (layout: LayoutNumbers): boolean => {
      const place = LAYOUTS.indexOf(layout);
      return place >= 0 && place < 10 && place !== 6 && place !== 7;
    };
    const { cache, worldsMet } = fakeCache((layout, world) =>
      isWide(layout) && world % 5 === 0 ? null : 80 - LAYOUTS.indexOf(layout) + luck(world),
    );
    const result = resultOf(inOrder, cache);
    const found = result.found.map((row, i) => ({
      ...row,
      outcome: outcomeOf({ breakpointBoard: isWide(row.layout) ? 5 : 9 }),
      expected: i < 6 ? row.expected : Number.NEGATIVE_INFINITY, // only the six were rolled before
    }));
    await cache.roll(found.slice(0, 6), 10);
    const { rows } = await finals({ ...result, found }, 2, setting);
    expect(rows.slice(0, 2).map(({ layout }) => layout)).toEqual(LAYOUTS.slice(6, 8));
    expect(worldsMet(LAYOUTS[8])).toBe(0);
    expect(worldsMet(LAYOUTS[0])).toBe(10);
  });

  test('where only the worlds of the final show that all find the gutter more often, others are rolled in their place', async () => {
    const isWide = (layout: LayoutNumbers): boolean =>
      LAYOUTS.indexOf(layout) >= 0 && LAYOUTS.indexOf(layout) < 9;
    const { cache } = fakeCache((layout, world) =>
      isWide(layout) && world >= 10 && world % 5 === 0 ? null : 80 - LAYOUTS.indexOf(layout) + luck(world),
    );
    const result = resultOf(inOrder, cache);
    const found = result.found.map((row) => ({
      ...row,
      outcome: outcomeOf({ breakpointBoard: isWide(row.layout) ? 5 : 9 }),
    }));
    const { rows } = await finals({ ...result, found }, 2, setting);
    expect(rows.slice(0, 2).map(({ layout }) => layout)).toEqual(LAYOUTS.slice(9, 11));
  });

  test('looking again ends, though every one looked at disappoints', async () => {
    const { cache } = fakeCache((_, world) => 10 + luck(world));
    const { rows } = await ranking(inOrder, cache);
    expect(rows.length).toBeGreaterThanOrEqual(3);
    for (const { worlds } of rows) expect(worlds.scores).toHaveLength(WORLDS);
  });
});

describe('finalists', () => {
  const inOrder = LAYOUTS.map((_, i) => 80 - i);

  test('are as few as asked for where luck is small, more where it is great, within limits', async () => {
    // the first and the second are neck and neck; the third lies so far behind that no luck hides it
    const countAt = async (noise: number): Promise<number> => {
      const { cache, worldsMet } = fakeCache(
        (layout, world) =>
          80 - 5 * LAYOUTS.indexOf(layout) + noise * Math.sin(3 * world + 40 * LAYOUTS.indexOf(layout)),
      );
      await finals(resultOf(inOrder, cache), 1, {
        ...setting,
        budget: {
          ...budget,
          heats: [{ worlds: 10, least: 8, most: 8, moreThanShown: 0 }],
          final: { least: 1, most: 6 },
        },
      });
      return LAYOUTS.filter((layout) => worldsMet(layout) === WORLDS).length;
    };
    const [sure, unsure] = [await countAt(0.01), await countAt(60)];
    expect(sure).toBe(1);
    expect(unsure).toBeGreaterThan(2);
    expect(unsure).toBeLessThanOrEqual(6);
  });

  test('meet the worlds of each heat in turn, fewer each time', async () => {
    const heats = [
      { worlds: 4, least: 8, most: 8, moreThanShown: 0 },
      { worlds: 8, least: 5, most: 5, moreThanShown: 0 },
      { worlds: 999, least: 3, most: 3, moreThanShown: 0 },
    ];
    const { cache, worldsMet } = fakeCache((layout) => 80 - LAYOUTS.indexOf(layout));
    await finals(resultOf(inOrder, cache), 1, {
      ...setting,
      budget: { ...budget, heats, final: { least: 2, most: 2 } },
    });
    expect(LAYOUTS.map(worldsMet)).toEqual([40, 40, 40, 8, 8, 4, 4, 4, 0, 0, 0, 0]);
  });
});

describe('rankInWorlds', () => {
  const rules: OrderRules = {
    ids: ['hookStartFt'],
    hasWish: true,
    scatter: { hookStartFt: 1e-9, sharpnessDegPerFt: 1e-9, totalHookBoards: 1e-9 },
    byPractice: () => 0,
    clearanceIn: () => 1,
  };
  const inOrder = LAYOUTS.map((_, i) => 80 - i);
  const ranked = async (top: number, usualScores: number, may = true) => {
    const { cache: made } = fakeCache((layout) =>
      layout === MIDDLE_LAYOUT ? usualScores : 80 - LAYOUTS.indexOf(layout),
    );
    const sound = madeUpOutcome(may ? {} : { shot: 'gutter' });
    const cache = { ...made, middle: { layout: MIDDLE_LAYOUT, outcome: sound } };
    return rankInWorlds(
      resultOf(inOrder, cache),
      top,
      { ...madeUpSetting(() => ({})).setting, ...setting },
      rules,
    );
  };

  test('lists the best that differ, the next after those, and the usual beside them', async () => {
    const { ranked: listed, runnerUp, middle } = await ranked(2, 10);
    expect(listed.map(({ layout }) => layout)).toEqual(LAYOUTS.slice(0, 2));
    expect(runnerUp!.layout).toEqual(LAYOUTS[2]);
    expect(middle.layout).toEqual(MIDDLE_LAYOUT);
    expect(middle.worlds.meanScore).toBe(10);
  });

  test('lets the usual take part where it may be drilled, and only there', async () => {
    expect((await ranked(2, 99)).ranked.map(({ layout }) => layout)).toEqual([MIDDLE_LAYOUT, LAYOUTS[0]]);
    const without = await ranked(2, 99, false);
    expect(without.ranked.map(({ layout }) => layout)).not.toContainEqual(MIDDLE_LAYOUT);
    expect(without.middle.worlds.meanScore).toBe(99);
  });

  test('lists the usual once where it was found besides', async () => {
    const { cache: made } = fakeCache((layout) =>
      keyOf(layout) === keyOf(MIDDLE_LAYOUT) ? 79.5 : 80 - LAYOUTS.indexOf(layout),
    );
    const cache = { ...made, middle: { layout: MIDDLE_LAYOUT, outcome: madeUpOutcome({}) } };
    const result = resultOf(inOrder, cache);
    const found = [
      result.found[0],
      { ...result.found[1], layout: { ...MIDDLE_LAYOUT }, expected: 79.5 },
      ...result.found.slice(1),
    ];
    const { ranked } = await rankInWorlds(
      { ...result, found },
      3,
      { ...madeUpSetting(() => ({})).setting, ...setting },
      rules,
    );
    expect(ranked.map(({ layout }) => keyOf(layout))).toEqual(
      [LAYOUTS[0], MIDDLE_LAYOUT, LAYOUTS[1]].map(keyOf),
    );
  });

  test('counts the usual once, too, where layouts that tie are weighed against one another', async () => {
    const [first, second] = LAYOUTS;
    // in a circle, each ahead of the next in two worlds of three, and all of one mean: practice decides
    const circle = new Map([first, second, MIDDLE_LAYOUT].map((layout, i) => [keyOf(layout), i]));
    const { cache: made } = fakeCache((layout, world) => {
      const place = circle.get(keyOf(layout));
      return place === undefined ? 10 : 50 - 0.1 * ((place + world) % 3);
    });
    const cache = { ...made, middle: { layout: MIDDLE_LAYOUT, outcome: madeUpOutcome({}) } };
    const result = resultOf(inOrder, cache);
    const found = [...result.found.slice(0, 2), { ...result.found[2], layout: { ...MIDDLE_LAYOUT } }];
    const byPractice = (layout: LayoutNumbers): number => 50 - 10 * circle.get(keyOf(layout))!;
    const { ranked } = await rankInWorlds(
      { ...result, found },
      3,
      { ...madeUpSetting(() => ({})).setting, ...setting },
      { ...rules, byPractice },
    );
    // the first is behind the usual, the second behind the first; the usual leads, and the others stand by practice
    expect(ranked.map(({ layout }) => keyOf(layout))).toEqual([MIDDLE_LAYOUT, first, second].map(keyOf));
  });

  test('has no runner-up where nothing follows', async () => {
    const { cache: made } = fakeCache(() => 50);
    const cache = { ...made, middle: { layout: MIDDLE_LAYOUT, outcome: madeUpOutcome({ shot: 'gutter' }) } };
    const only = { ...resultOf(inOrder, cache), found: resultOf(inOrder, cache).found.slice(0, 1) };
    const { ranked, runnerUp } = await rankInWorlds(
      only,
      3,
      { ...madeUpSetting(() => ({})).setting, ...setting },
      rules,
    );
    expect(ranked.map(({ layout }) => layout)).toEqual([LAYOUTS[0]]);
    expect(runnerUp).toBeNull();
  });
});

test('progress in worlds counts what is still to be met, up to all of it', async () => {
  const { cache } = fakeCache(() => 50);
  const shots = LAYOUTS.slice(0, 3).map((layout) => ({ layout, outcome }));
  await cache.roll(shots.slice(0, 1), 10);
  const told: [number, number][] = [];
  const telling: ScoredCache = {
    ...cache,
    async roll(rows, worlds, onDone) {
      await cache.roll(rows, worlds);
      onDone?.(100);
      onDone?.(50);
    },
  };
  const { rows, middle } = await simulateLayouts(shots, telling, {
    problem: setting.problem,
    progress: () => (done, total) => void told.push([done, total]),
  });
  const total = 4 * WORLDS - 10;
  expect(told).toEqual([
    [100, total],
    [150, total],
  ]);
  expect(rows.map(({ layout }) => layout)).toEqual(LAYOUTS.slice(0, 3));
  expect([middle.layout, middle.nominal]).toEqual([MIDDLE_LAYOUT, outcome]);
  expect(middle.worlds.scores).toHaveLength(WORLDS);
});
