import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { MOST_COORDINATES, scrambledSobol, sobolBits } from '../../src/math/scrambled-sobol.js';

const scipy: { readonly points: Readonly<Record<string, readonly number[]>> } = JSON.parse(
  readFileSync(new URL('sobol-points.json', import.meta.url), 'utf8'),
);
const coordinates = Array.from({ length: MOST_COORDINATES }, (_, i) => i);

describe('scrambledSobol', () => {
  test.each(Object.entries(scipy.points))(
    'before scrambling, point %s is that of scipy in 48 coordinates',
    (n, point) => {
      expect(coordinates.map((coordinate) => sobolBits(Number(n), coordinate))).toEqual(point);
    },
  );

  test.each([1, 2, 77])(
    'seed %i: any first 2^k points put one in each of 2^k even intervals, in each coordinate',
    (seed) => {
      for (const count of [4, 16, 64, 256])
        for (const coordinate of coordinates) {
          const cells = Array.from({ length: count }, (_, n) =>
            Math.floor(count * scrambledSobol(n, coordinate, seed)),
          );
          expect(new Set(cells).size).toBe(count);
        }
    },
  );

  test('in the first two coordinates 64 points put one in each box of any 8 × 8, 4 × 16 and 16 × 4', () => {
    for (const [across, up] of [
      [8, 8],
      [4, 16],
      [16, 4],
    ]) {
      const boxes = Array.from({ length: 64 }, (_, n) => {
        const [x, y] = [0, 1].map((coordinate) => scrambledSobol(n, coordinate, 5));
        return `${Math.floor(across * x)} ${Math.floor(up * y)}`;
      });
      expect(new Set(boxes).size).toBe(64);
    }
  });

  test('over seeds a point is spread evenly: mean 1/2, variance 1/12, and coordinates do not go together', () => {
    const seeds = Array.from({ length: 4000 }, (_, i) => i);
    const values = [0, 3, 24].map((coordinate) => seeds.map((seed) => scrambledSobol(6, coordinate, seed)));
    const mean = (list: readonly number[]): number => list.reduce((sum, x) => sum + x, 0) / list.length;
    for (const list of values) {
      expect(Math.abs(mean(list) - 1 / 2)).toBeLessThan(4 * Math.sqrt(1 / 12 / 4000)); // four standard errors
      expect(mean(list.map((x) => (x - 1 / 2) ** 2))).toBeCloseTo(1 / 12, 2);
    }
    const together = mean(values[0].map((x, i) => (x - 1 / 2) * (values[2][i] - 1 / 2)));
    expect(Math.abs(together)).toBeLessThan(4 / 12 / Math.sqrt(4000));
  });

  test('the mean of a smooth function of 25 coordinates errs far less than with random points', () => {
    // Π (1 + (x − 1/2)/j²) over coordinates j has mean 1
    const of = (point: (coordinate: number) => number): number =>
      coordinates.slice(0, 25).reduce((product, j) => product * (1 + (point(j) - 1 / 2) / (j + 1) ** 2), 1);
    const errors = Array.from({ length: 50 }, (_, seed) => {
      const sum = Array.from({ length: 64 }, (_, n) => of((j) => scrambledSobol(n, j, seed))).reduce(
        (a, b) => a + b,
      );
      return sum / 64 - 1;
    });
    const spread = Math.sqrt(errors.reduce((sum, error) => sum + error ** 2, 0) / errors.length);
    // for independent points: √((Π (1 + 1/(12 j⁴)) − 1)/64) = 0.0377
    expect(spread).toBeLessThan(0.0377 / 8);
  });
});
