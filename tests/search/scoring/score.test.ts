import { expect, test } from 'vitest';
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
