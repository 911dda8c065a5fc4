import { describe, expect, test } from 'vitest';
import { DEGREE, FOOT } from '../../../src/base/units.js';
import { score, wishMiss } from '../../../src/search/scoring/score.js';
import { type Target, targetsOf } from '../../../src/search/scoring/target.js';
import type { Outcome } from '../../../src/simulate/simulator.js';

const outcome = (hookStartFt: number, entryDeg = 5): Outcome =>
  ({
    shot: 'pins',
    reaction: {
      hookStart: hookStartFt * FOOT,
      sharpness: 0.1,
      totalHook: 0.4,
      entryAngle: entryDeg * DEGREE,
    },
  }) as Outcome;

const attained = Array.from({ length: 101 }, (_, i) => outcome(30 + i / 10));

test('targetsOf: steps are quantiles of what is attained; a wish left out makes no target', () => {
  const [target, ...others] = targetsOf({ hookStart: 4 }, attained);
  expect(others).toEqual([]);
  expect(target.value / FOOT).toBeCloseTo(37.5, 1); // 0.75 quantile of 30.0 … 40.0
  expect(target.low / FOOT).toBeCloseTo(30.2, 1);
  expect(target.high / FOOT).toBeCloseTo(39.8, 1);
});

test('score: meeting every wish with a good entry angle is 100, and missing lowers it steadily', () => {
  const targets = targetsOf({ hookStart: 3 }, attained);
  const at = (ft: number) => score(outcome(ft), targets);
  expect(at(35)).toBeCloseTo(100, 6);
  expect(at(36)).toBeGreaterThan(at(37));
  expect(at(34)).toBeCloseTo(at(36), 6);
  expect(at(39)).toBeGreaterThan(0);
});

test('wishMiss: more than an extreme wish asked for is no miss', () => {
  const [late] = targetsOf({ hookStart: 5 }, attained) as [Target];
  expect(wishMiss(outcome(41), late)).toBe(0);
  expect(wishMiss(outcome(38), late)).toBeLessThan(0);
});

test('score: an entry angle outside 4 to 6 degrees decides between equals; the gutter scores nothing', () => {
  const targets = targetsOf({ hookStart: 3 }, attained);
  expect(score(outcome(35, 2), targets)).toBeLessThan(score(outcome(35, 5), targets));
  expect(score({ ...outcome(35), shot: 'gutter' }, targets)).toBe(0);
});

describe('score, by numbers worked by hand: 100 (1 − √(Σ miss² + 0.1 entry²) / (wishes + 0.1))', () => {
  /** A middle wish for 10 ft of hook start, of which layouts attain 8 to 12. */
  const wish: Target = { wish: 'hookStart', step: 3, value: 10 * FOOT, low: 8 * FOOT, high: 12 * FOOT };
  /** The same of 0.4 m of total hook, of which layouts attain 0.2 to 0.7. */
  const second: Target = { wish: 'totalHook', step: 3, value: 0.4, low: 0.2, high: 0.7 };
  const hooking = (hookStartFt: number, totalHook: number, entryDeg: number): Outcome => {
    const { reaction, ...rest } = outcome(hookStartFt, entryDeg);
    return { ...rest, reaction: { ...reaction, totalHook } };
  };

  test.each([
    { name: 'no wish, entry 1.5° too flat: a quarter of six degrees', at: outcome(9, 2.5), of: [], want: 75 },
    { name: 'no wish, entry 3° too steep: half of six degrees', at: outcome(9, 9), of: [], want: 50 },
    { name: 'no wish, entry just within', at: outcome(9, 4.001), of: [], want: 100 },
    { name: 'no wish, entry just within the other end', at: outcome(9, 5.999), of: [], want: 100 },
    { name: 'no wish, entry 12° too steep: a full miss is the most', at: outcome(9, 18), of: [], want: 0 },
    // √(0.25² / 1.1)
    { name: 'a wish missed by a quarter', at: outcome(11), of: [wish], want: 76.1634353 },
    // √(0.5² / 1.1)
    { name: 'a wish missed by a half', at: outcome(8), of: [wish], want: 52.3268705 },
    // √(0.1 × (1/6)² / 1.1)
    { name: 'a wish met, entry 1° too steep', at: outcome(10, 7), of: [wish], want: 94.9748109 },
    // √((0.3² + 0.4² + 0.1) / 2.1) = 1/√6
    { name: 'two wishes missed by 0.3 and 0.4, entry far off', at: hooking(11.2, 0.2, 13), of: [wish, second], want: 59.1751710 },
  ])('$name: $want', ({ at, of, want }) => expect(score(at, of)).toBeCloseTo(want, 6)); // biome-ignore format: one row a case

  test('wishMiss: signed share of the attainable range; at the ends of the scale only on the one side', () => {
    for (const [step, feet, want] of [
      [3, 11, 0.25],
      [3, 9, -0.25],
      [1, 11, 0.25],
      [1, 9, 0],
      [5, 11, 0],
      [5, 9, -0.25],
      [2, 9, -0.25],
      [4, 11, 0.25],
    ] as const)
      expect(wishMiss(outcome(feet), { ...wish, step })).toBeCloseTo(want, 12);
    expect(wishMiss(outcome(11), { ...wish, high: wish.low })).toBe(0);
  });

  test('targetsOf: every step is its quantile of what is attained', () => {
    // 30.0 to 40.0 ft in steps of 0.1: the quantile p lies at the order ⌈101 p⌉, counted from 1
    const values = [1, 2, 3, 4, 5].map((step) => targetsOf({ hookStart: step }, attained)[0]!.value / FOOT);
    for (const [i, want] of [30.2, 32.5, 35, 37.5, 39.8].entries()) expect(values[i]).toBeCloseTo(want, 6);
  });
});
