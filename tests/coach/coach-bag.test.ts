import { expect, test } from 'vitest';
import { coachBag } from '../../src/coach/coach-bag.js';
import { coachPairOf } from '../support/coach-answer.js';
import { said } from '../support/said.js';

const bagOf = (hooks: readonly number[], hookStartFt = 40, weightsLb = [15]) =>
  coachBag(
    hooks.map((totalHookBoards, i) => coachPairOf(`ball ${i + 1}`, { totalHookBoards, hookStartFt })),
    hooks.map((_, i) => ({ weightLb: weightsLb[i % weightsLb.length] as number })),
  );

test('coachBag: two balls with the same reaction are named, others are not', () => {
  expect(bagOf([20, 20.5, 30]).alike).toEqual([['ball 1', 'ball 2']]);
  expect(bagOf([20, 24, 28]).alike).toEqual([]);
});

test('coachBag: the same hook at another place is another ball', () => {
  const bag = coachBag(
    [coachPairOf('early', { hookStartFt: 37 }), coachPairOf('late', { hookStartFt: 43 })],
    [{ weightLb: 15 }],
  );
  expect(bag.alike).toEqual([]);
});

test('coachBag: a step much wider than the others is a gap, even steps are none', () => {
  expect(bagOf([20, 22.5, 25, 27.5]).gaps).toEqual([]);
  expect(bagOf([20, 22, 24, 36]).gaps).toEqual([{ fromBoards: 24, toBoards: 36 }]);
  expect(said(bagOf([20, 22, 24, 36]).says.slice(-1))).toBe(
    'No ball lies between ball 3 (24.0 boards of hook) and ball 4 (36.0).',
  );
});

test('coachBag: balls of different weights are said to be compared as if the release were the same', () => {
  expect(bagOf([20, 24], 40, [15, 12]).says.map(({ code }) => code)).toContain('weights-differ');
  expect(said(bagOf([20, 24], 40, [15, 12]).says.slice(-1))).toBe(
    'Balls of 12 lb and of 15 lb are compared as if speed and rev rate were the same with each; which weight suits the hand is for a fitter to say.',
  );
  expect(bagOf([20, 24], 40, [15, 15.2]).says.map(({ code }) => code)).not.toContain('weights-differ');
});
