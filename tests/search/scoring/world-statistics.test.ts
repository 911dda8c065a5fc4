import fc from 'fast-check';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { mean as meanOf } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { FOOT, from } from '../../../src/base/units.js';
import type { Target } from '../../../src/search/scoring/target.js';
import {
  bandAtPins,
  bandOf,
  meanDifference,
  meanDifferences,
  pairedDeviations,
  pairedTwentieths,
  scoredOutcomes,
  scoresAtPins,
  shareAbove,
  shiftTargets,
  twentiethsOf,
  valuesAtPins,
} from '../../../src/search/scoring/world-statistics.js';
import { reader } from '../../../src/simulate/readings.js';
import { layoutAt, outcomeOf, rowOf } from '../../support/outcomes.js';

const scored = (scores: readonly (number | null)[]) => rowOf(layoutAt(50), scores).worlds;
const some = fc.array(fc.option(fc.integer({ min: 0, max: 5 }), { nil: null }), {
  minLength: 8,
  maxLength: 8,
});

describe('shareAbove', () => {
  test.each([
    { a: [3, 3, 3, 3], b: [1, 5, 3, 1], share: 2.5 / 4 },
    { a: [3, null, 3, 3], b: [1, 0, 3, null], share: 1.5 / 2 }, // only the first and the third count
    { a: [0, 9, null], b: [null, null, 9], share: 0.5 }, // never both: no telling
    { a: [null, 1], b: [100, 2], share: 0 },
  ])('$a over $b: $share', ({ a, b, share }) => {
    expect(shareAbove(scored(a), scored(b))).toBeCloseTo(share, 12);
  });

  test('either way round the two shares make one', () => {
    fc.assert(
      fc.property(some, some, (a, b) => {
        expect(shareAbove(scored(a), scored(b)) + shareAbove(scored(b), scored(a))).toBeCloseTo(1, 12);
      }),
    );
  });
});

const aim = (feet: number): Target => ({
  ...{ wish: 'hookStart', step: null, value: from(feet, FOOT) },
  ...{ low: from(feet - 5, FOOT), high: from(feet + 5, FOOT) },
});

describe('scoredOutcomes', () => {
  test('each world has its own target; where the ball misses the pins there is no score', () => {
    const rows = [
      outcomeOf({ hookStartFt: 38 }),
      outcomeOf({ hookStartFt: 42 }),
      outcomeOf({ hookStartFt: 38, shot: 'gutter' }),
      outcomeOf({ hookStartFt: 43 }),
    ];
    const { outcomes, scores, meanScore, arrives } = scoredOutcomes(rows, [
      [aim(38)],
      [aim(42)],
      [aim(38)],
      [aim(38)],
    ]);
    expect(outcomes).toBe(rows);
    expect(arrives).toBe(3 / 4);
    // on target twice with a good entry angle; once half the range off, beside an entry angle of weight 0.1 that is none
    const off = 100 * (1 - Math.sqrt(0.25 / 1.1));
    expect(scores[2]).toBeNull();
    expect(scores.map((each) => each ?? -1)).toEqual(
      [100, 100, -1, off].map((want) => expect.closeTo(want, 9)),
    );
    expect(meanScore).toBeCloseTo((200 + off) / 3, 9);
  });
});

describe('shiftTargets', () => {
  const nominal = outcomeOf({ hookStartFt: 38 });

  test('a target goes along with what luck does to the usual layout', () => {
    const [moved] = shiftTargets([aim(40)], outcomeOf({ hookStartFt: 36.5 }), nominal);
    expect(moved).toEqual({ ...aim(40), value: expect.closeTo(from(38.5, FOOT), 12) });
  });

  test('not where the usual layout misses the pins in this world or without luck', () => {
    const targets = [aim(40)];
    const gutter = outcomeOf({ hookStartFt: 30, shot: 'gutter' });
    expect(shiftTargets(targets, gutter, nominal)).toBe(targets);
    expect(shiftTargets(targets, nominal, gutter)).toBe(targets);
  });
});

describe('meanDifference', () => {
  const worlds = (hooks: readonly (number | null)[]) => ({
    ...scored(hooks),
    outcomes: hooks.map((hook) =>
      outcomeOf(hook === null ? { shot: 'gutter', hookStartFt: 999 } : { hookStartFt: hook }),
    ),
  });
  const read = reader('hookStartFt');

  test('worlds in which either ball misses the pins do not count, whatever its numbers', () => {
    expect(meanDifference(worlds([38, 40, null, 36]), worlds([37, null, 30, 38]), read)).toBeCloseTo(
      -0.5,
      12,
    );
    expect(meanDifference(worlds([38, null]), worlds([null, 30]), read)).toBe(0);
  });

  test('of several numbers: each by its own, in the units of answers', () => {
    const [a, b] = [
      { outcomes: [outcomeOf({ hookStartFt: 38, flareIn: 4 }), outcomeOf({ hookStartFt: 41, flareIn: 5 })] },
      { outcomes: [outcomeOf({ hookStartFt: 37, flareIn: 2 }), outcomeOf({ hookStartFt: 38, flareIn: 4 })] },
    ];
    expect(meanDifferences(['hookStartFt', 'flareIn'], a, b)).toEqual({
      hookStartFt: expect.closeTo(2, 9),
      flareIn: expect.closeTo(1.5, 9),
    });
  });

  test('quantiles of differences: of worlds in which both reach the pins alone, ascending about the mean', () => {
    const [a, b] = [worlds([38, 40, null, 36, 41]), worlds([37, null, 30, 38, 41])]; // 1, -2 and 0
    const { hookStartFt } = pairedTwentieths(['hookStartFt'], a, b);
    expect(hookStartFt).toHaveLength(20);
    expect(hookStartFt).toEqual([...hookStartFt].sort((x, y) => x - y));
    expect([hookStartFt[0], hookStartFt.at(-1)]).toEqual([-2, 1]);
    // of three values the n-th has n/4 below it: at 47.5 and 52.5 % one is a tenth of a step to either side of the second
    expect(hookStartFt[9]).toBeCloseTo(-0.2, 12);
    expect(hookStartFt[10]).toBeCloseTo(0.1, 12);
    expect(pairedTwentieths(['hookStartFt'], worlds([38, null]), worlds([null, 30])).hookStartFt).toEqual(
      Array.from({ length: 20 }, () => 0),
    );
  });

  test('standard deviations of differences: about their mean, of worlds in which both reach the pins alone', () => {
    const [a, b] = [worlds([38, 40, null, 36, 41]), worlds([37, null, 30, 38, 41])]; // 1, -2 and 0
    expect(pairedDeviations(['hookStartFt'], a, b)).toEqual({
      hookStartFt: expect.closeTo(Math.sqrt(42 / 27), 12), // (16 + 25 + 1) / 9 over three
    });
    expect(pairedDeviations(['hookStartFt'], worlds([38, null]), worlds([null, 30]))).toEqual({
      hookStartFt: 0,
    });
  });

  test('where both always reach the pins it is the difference of their means, and the opposite the other way round', () => {
    const hooks = fc.array(fc.integer({ min: 30, max: 50 }), { minLength: 5, maxLength: 5 });
    const mean = (list: readonly number[]): number => list.reduce((sum, x) => sum + x, 0) / list.length;
    fc.assert(
      fc.property(hooks, hooks, (a, b) => {
        const difference = meanDifference(worlds(a), worlds(b), read);
        expect(difference).toBeCloseTo(mean(a) - mean(b), 9);
        expect(meanDifference(worlds(b), worlds(a), read)).toBeCloseTo(-difference, 12);
      }),
    );
  });
});

describe('what is read at the pins', () => {
  test('scores: those of worlds in which the ball gets there; a single 0 where it never does', () => {
    expect(scoresAtPins({ scores: [3, null, 0, 5] })).toEqual([3, 0, 5]);
    expect(scoresAtPins({ scores: [null, null] })).toEqual([0]);
  });

  test('numbers: the same worlds; all of them where it never gets there', () => {
    const rows = [outcomeOf({ flareIn: 3 }), outcomeOf({ flareIn: 9, shot: 'gutter' })];
    expect(valuesAtPins(rows, reader('flareIn'))).toEqual([expect.closeTo(3, 9)]);
    expect(valuesAtPins(rows.slice(1), reader('flareIn'))).toEqual([expect.closeTo(9, 9)]);
    const [low, high] = [expect.closeTo(3, 9), expect.closeTo(5, 9)];
    expect(bandAtPins([...rows, outcomeOf({ flareIn: 5 })], reader('flareIn'))).toEqual({ low, high });
  });
});

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
      expect(Math.abs(meanOf(shares) - 0.9)).toBeLessThan(4 * standardError);
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
