import fc from 'fast-check';
import { expect, test } from 'vitest';
import { spread } from '../../../src/report/picture/callouts.js';
import { expectNear } from '../../support/expect-near.js';

const heights = fc
  .array(fc.double({ min: 0, max: 100, noNaN: true }), { minLength: 1, maxLength: 8 })
  .map((list) => [...list].sort((a, b) => a - b));

test('spread: names are at least a gap apart, in order, and within the limits where there is room', () =>
  fc.assert(
    fc.property(heights, (given) => {
      const placed = spread(given, 10, [0, 100]);
      placed.slice(1).forEach((at, i) => {
        expect(at - placed[i]!).toBeGreaterThanOrEqual(10 - 1e-9);
      });
      expect(placed[0]).toBeGreaterThanOrEqual(-1e-9);
      expect(placed.at(-1)).toBeLessThanOrEqual(100 + 1e-9);
    }),
  ));

test('spread: names with room stay where they are', () => {
  expectNear(spread([5, 30, 80], 10, [0, 100]), [5, 30, 80], 1e-12);
});

test('spread: two in one place move apart by half a gap each (the least-squares answer)', () => {
  expectNear(spread([50, 50], 10, [0, 100]), [45, 55], 1e-12);
  expectNear(spread([50, 50, 53], 10, [0, 100]), [41, 51, 61], 1e-12); // mean of 50, 40, 33 is 41
});

test('spread: no choice of heights a gap apart is nearer (brute force on a grid)', () => {
  const given = [10, 12, 13, 40];
  const cost = (list: readonly number[]): number =>
    list.reduce((sum, at, i) => sum + (at - given[i]!) ** 2, 0);
  const best = cost(spread(given, 5, [0, 60]));
  let least = Number.POSITIVE_INFINITY;
  for (let a = 0; a <= 20; a += 0.5)
    for (let b = a + 5; b <= 30; b += 0.5)
      for (let c = b + 5; c <= 35; c += 0.5)
        for (let d = c + 5; d <= 60; d += 0.5) least = Math.min(least, cost([a, b, c, d]));
  expect(best).toBeLessThanOrEqual(least + 1e-9);
});
