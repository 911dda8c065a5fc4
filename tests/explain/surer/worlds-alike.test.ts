import { describe, expect, test } from 'vitest';
import { localMeans } from '../../../src/explain/surer/local-means.js';
import { ALIKE_WITHIN, worldsAlike } from '../../../src/explain/surer/worlds-alike.js';
import { normalNumbers } from '../../support/normal-numbers.js';

const COUNT = 1500;

describe('worldsAlike', () => {
  test('weights of a row add up to 1, none on the world itself, most on what is nearest', () => {
    const { whole } = worldsAlike([{ values: [0, 1, 2, 4, 100], knownShare: 1 }]);
    for (const [here, row] of whole.entries()) {
      expect(row.reduce((sum, each) => sum + each, 0)).toBeCloseTo(1, 12);
      expect(row[here]).toBe(0);
    }
    expect(whole[0].indexOf(Math.max(...whole[0]))).toBe(1);
    expect(whole[4].indexOf(Math.max(...whole[4]))).toBe(3); // far from all, and has a neighbour
  });

  test('a number that does not differ tells no worlds apart', () => {
    const { whole } = worldsAlike([{ values: [3, 3, 3, 3, 3], knownShare: 1 }]);
    expect([...whole[0]]).toEqual([0, 0.25, 0.25, 0.25, 0.25]);
  });

  // Of a normal x: local means lie at x/(1 + w²); of what a share s of it tells, at s·x/(1 + w²) (product of two normal densities)
  test.each([1, 0.7])(
    'local means of a normal number follow from what is known of it, a share of %d',
    (share) => {
      const x = normalNumbers(3)(COUNT);
      const { known } = worldsAlike([{ values: x, knownShare: share }]);
      const means = localMeans(known, Float64Array.from(x));
      const within = x.map((_, i) => i).filter((i) => Math.abs(x[i]) < 2);
      const off = within.map((i) => means[i] - (share * x[i]) / (1 + ALIKE_WITHIN ** 2));
      const typical = Math.sqrt(off.reduce((sum, each) => sum + each ** 2, 0) / off.length);
      // a local mean over some third of the worlds errs by 0.6/√500; standardising by as much again
      expect(typical).toBeLessThan(0.06);
      expect(within.length).toBeGreaterThan(0.9 * COUNT);
    },
  );
});

test('localMeans: what a world itself does has no part in what is expected there', () => {
  const { whole } = worldsAlike([{ values: [0, 1, 2, 3, 4, 5], knownShare: 1 }]);
  const before = localMeans(whole, Float64Array.from([1, 5, 2, 8, 3, 4]));
  const after = localMeans(whole, Float64Array.from([1, 5, 99, 8, 3, 4]));
  expect(after[2]).toBe(before[2]);
  expect(after[1]).toBeGreaterThan(before[1]);
});
