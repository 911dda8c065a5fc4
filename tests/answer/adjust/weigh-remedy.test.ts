import { expect, test } from 'vitest';
import { missOf, weighRemedy } from '../../../src/answer/adjust/weigh-remedy.js';
import { outcomeOf, SCATTER } from '../../support/outcomes.js';

const BEFORE = [36, 38, 40].map((hookStartFt) => outcomeOf({ hookStartFt }));
const later = (feet: readonly number[]) =>
  feet.map((by, i) => outcomeOf({ hookStartFt: [36, 38, 40][i] + by }));

const weighed = (feet: readonly number[], wanted: number) =>
  weighRemedy(later(feet), BEFORE, { hookStartFt: wanted }, SCATTER);

test('the effect is the mean of the differences world by world, and what is left is the rest', () => {
  const { effect, left, miss } = weighed([1, 2, 3], 3);
  expect(effect.hookStartFt).toBeCloseTo(2, 12);
  expect(left.hookStartFt).toBeCloseTo(1, 12);
  expect(miss).toBeCloseTo(1, 12);
});

test('half the scatter is seen in a night: what is less is not told from it, whatever is wanted', () => {
  expect(weighed([0.4, 0.4, 0.4], 0.6).verdict).toBe('unseen');
  expect(weighed([0.6, 0.6, 0.6], 3).verdict).toBe('helps');
});

test('what goes too far by as much as is missing is no help, nor is what goes the wrong way', () => {
  expect(weighed([4, 4, 4], 2).verdict).toBe('no-help');
  expect(weighed([-1, -1, -1], 2).verdict).toBe('no-help');
  expect(weighed([2, 2, 2], 2).verdict).toBe('helps');
});

test('nearer is the share of worlds in which it comes nearer; worlds in which a ball ends in the gutter do not count', () => {
  expect(weighed([1, 1, -1], 2).nearer).toBeCloseTo(2 / 3, 12);
  const [one, , three] = later([1, 1, -1]);
  const gutter = outcomeOf({ shot: 'gutter' });
  expect(weighRemedy([one, gutter, three], BEFORE, { hookStartFt: 2 }, SCATTER).nearer).toBeCloseTo(
    1 / 2,
    12,
  );
});

test('several wishes count each in its own scatter: 3 ft of 1 and 2 boards of 2 are the root of (9 + 1) / 2', () => {
  expect(missOf({ hookStartFt: 3, totalHookBoards: 2 }, SCATTER)).toBeCloseTo(Math.sqrt(5), 12);
});
