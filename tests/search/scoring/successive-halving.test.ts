import { mean } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { successiveHalving } from '../../../src/search/scoring/successive-halving.js';

const COUNT = 3000;
const WORLDS = 64;
const ROUNDS = [
  { worlds: 8, keep: 1000 },
  { worlds: 32, keep: 200 },
  { worlds: WORLDS, keep: 0 },
];
const skill = (index: number): number => 50 + 40 * Math.sin(index); // all differ
const luck = (world: number): number => 30 * Math.cos(1.3 * world + 0.5);

describe('successiveHalving', () => {
  test('where luck takes all alike, the order and every mean are those of all worlds, though most met eight', async () => {
    let asked = 0;
    const results = await successiveHalving(COUNT, WORLDS, ROUNDS, async (world, which, tell) => {
      asked += which.length;
      for (const index of which) tell(index, skill(index) + luck(world));
    });
    const best = [...Array(COUNT).keys()].sort((a, b) => skill(b) - skill(a));
    expect(results.map(({ index }) => index)).toEqual(best);
    const lucky = mean(Array.from({ length: WORLDS }, (_, world) => luck(world)));
    for (const { index, meanScore } of results) expect(meanScore).toBeCloseTo(skill(index) + lucky, 9);
    expect(results.map(({ worlds }) => worlds)).toEqual(
      best.map((_, i) => (i < 200 ? 64 : i < 1000 ? 32 : 8)),
    );
    expect(asked).toBe(3000 * 8 + 1000 * 24 + 200 * 32);
  });

  test('with few worlds or few layouts, all meet all', async () => {
    const results = await successiveHalving(5, 3, ROUNDS, async (_, which, tell) => {
      for (const index of which) tell(index, index);
    });
    expect(results).toEqual([4, 3, 2, 1, 0].map((index) => ({ index, meanScore: index, worlds: 3 })));
  });

  test('where scores are the same, the order of the list decides who drops out', async () => {
    const rounds = [
      { worlds: 1, keep: 2 },
      { worlds: 2, keep: 0 },
    ];
    const results = await successiveHalving(4, 2, rounds, async (_, which, tell) => {
      for (const index of which) tell(index, 7);
    });
    expect(results.map(({ index, worlds }) => [index, worlds])).toEqual([
      [0, 2],
      [1, 2],
      [2, 1],
      [3, 1],
    ]);
    // also of those that come level later on
    const level = await successiveHalving(2, 2, rounds, async (world, which, tell) => {
      for (const index of which) tell(index, index === world ? 0 : 5);
    });
    expect(level.map(({ index, meanScore }) => [index, meanScore])).toEqual([
      [0, 2.5],
      [1, 2.5],
    ]);
  });
});
