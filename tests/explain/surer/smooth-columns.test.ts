import { probit } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { fitOverWorlds } from '../../../src/explain/surer/fit-over-worlds.js';
import { dotOf, smoothColumns } from '../../../src/explain/surer/smooth-columns.js';

/** Normal numbers, evenly spread: quantiles in the middle of equal shares, in a scrambled order of their own. */
const normals = (count: number, stride: number): number[] =>
  Array.from({ length: count }, (_, i) => probit((((i * stride) % count) + 0.5) / count));

const COUNT = 257; // prime: each stride gives another order
const a = { values: normals(COUNT, 1).map((z) => 4 + 2 * z), knownShare: 0.8 };
const b = { values: normals(COUNT, 45).map((z) => 0.1 * z), knownShare: 1 };

describe('smoothColumns', () => {
  test('columns are orthonormal and their means 0; of a pair there are five', () => {
    const { fitted } = smoothColumns([a, b]);
    expect(fitted).toHaveLength(5);
    for (const [i, one] of fitted.entries()) {
      expect(Math.abs(dotOf(one, new Float64Array(COUNT).fill(1)))).toBeLessThan(1e-9);
      for (const [k, other] of fitted.entries()) expect(dotOf(one, other)).toBeCloseTo(i === k ? 1 : 0, 10);
    }
  });

  test('a number that does not differ has no column, and one of two values no square', () => {
    expect(smoothColumns([{ values: [3, 3, 3, 3], knownShare: 1 }]).fitted).toHaveLength(0);
    expect(smoothColumns([{ values: [0, 1, 1, 0, 1], knownShare: 1 }]).fitted).toHaveLength(1);
  });

  test('where all of a number can be known, what is expected is what is fitted', () => {
    const { fitted, known } = smoothColumns([b, { ...a, knownShare: 1 }]);
    expect(known).toEqual(fitted);
  });

  // With x = m + u + s, u known and s not: E[x² | u] = (m + u)² + var s, and E[x²] = m² + var u + var s (closed form)
  test('of the square of a number of which a part can be known, what is expected given that part', () => {
    const values = a.values.map((x) => x ** 2);
    const { known } = fitOverWorlds(smoothColumns([a]), values);
    const [middle, deviation] = [4, 2 * a.knownShare];
    const u = a.values.map((x) => (x - middle) * a.knownShare); // as much of each draw as can be known
    const expected = u.map((part) => (middle + part) ** 2 - middle ** 2 - deviation ** 2);
    // quantiles in the middle of shares lack a little of the tails: their deviation is 0.3 % too small
    for (const [i, want] of expected.entries()) expect(Math.abs(known[i] - want)).toBeLessThan(0.1);
    expect(Math.max(...expected)).toBeGreaterThan(15);
  });
});
