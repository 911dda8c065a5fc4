import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nearestThatWorks } from '../../src/prepare/nearest-that-works.js';

const TRIALS = { step: 0.01, stride: 3, least: 2.4, most: 2.8 };

test.each([
  { name: 'above, on a stride', from: 2.5, works: (x: number) => x >= 2.56, want: 2.56 },
  { name: 'above, between strides', from: 2.5, works: (x: number) => x > 2.563, want: 2.57 },
  { name: 'below', from: 2.5, works: (x: number) => x < 2.48, want: 2.47 },
  { name: 'on both sides, the nearer', from: 2.5, works: (x: number) => x < 2.485 || x > 2.525, want: 2.48 },
  { name: 'the last that may be tried', from: 2.5, works: (x: number) => x > 2.795, want: 2.8 },
  { name: 'one that is not on a step', from: 2.503, works: (x: number) => x > 2.51, want: 2.52 },
  { name: 'out of range at first', from: 2.9, works: (x: number) => x < 2.79, want: 2.78 },
  { name: 'none that may be tried', from: 2.5, works: (x: number) => x > 2.805, want: null },
])('nearestThatWorks: $name', ({ from, works, want }) => {
  expect(nearestThatWorks(from, TRIALS, works)).toBe(want);
});

test('nearestThatWorks: agrees with trying every step, for any stretch wider than a stride', () =>
  fc.assert(
    fc.property(
      fc.integer({ min: 240, max: 280 }),
      fc.integer({ min: 230, max: 290 }),
      fc.integer({ min: 3, max: 40 }),
      (typed, low, width) => {
        const works = (x: number): boolean =>
          Math.round(100 * x) >= low && Math.round(100 * x) <= low + width;
        fc.pre(!works(typed / 100));
        const all = Array.from({ length: 41 }, (_, i) => 240 + i).filter((i) => works(i / 100));
        const want = all.map((i) => Math.abs(i - typed)).sort((a, b) => a - b)[0];
        const got = nearestThatWorks(typed / 100, TRIALS, works);
        if (want === undefined) expect(got).toBeNull();
        else expect(Math.abs(Math.round(100 * (got ?? 0)) - typed)).toBe(want);
      },
    ),
  ));
