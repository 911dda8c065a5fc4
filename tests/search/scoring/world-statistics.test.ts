import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { mean } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { bandOf, twentiethsOf } from '../../../src/search/scoring/world-statistics.js';

describe('bandOf', () => {
  const generator = xoroshiro128plus(1);
  const uniform = (): number => uniformFloat64(generator);

  test.each([24, 64, 128, 200])(
    'nine in ten fresh values lie in the band over %i, of uniform numbers within four standard errors',
    (count) => {
      const REPEATS = 4000;
      const shares = Array.from({ length: REPEATS }, () => {
        const { low, high } = bandOf(Array.from({ length: count }, uniform));
        return high - low; // the chance of a fresh one, since they are uniform from 0 to 1
      });
      // the share within a band of count values is beta distributed: its variance is below 0.1 * 0.9 / count
      const standardError = Math.sqrt((0.1 * 0.9) / count / REPEATS);
      expect(Math.abs(mean(shares) - 0.9)).toBeLessThan(4 * standardError);
    },
  );

  test('of few values it is all of them, of one that one', () => {
    expect(bandOf([3, 1, 2])).toEqual({ low: 1, high: 3 });
    expect(bandOf([7])).toEqual({ low: 7, high: 7 });
  });
});

test('twentiethsOf: the middles of the twentieths of 19 even steps, ends where there is nothing beyond', () => {
  const steps = Array.from({ length: 19 }, (_, i) => i + 1); // the n-th is the quantile of n/20
  const expected = Array.from({ length: 20 }, (_, i) => Math.min(19, Math.max(1, i + 0.5)));
  for (const [i, value] of twentiethsOf(steps).entries()) expect(value).toBeCloseTo(expected[i], 12);
});
