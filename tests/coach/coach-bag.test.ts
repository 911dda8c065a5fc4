import { expect, test } from 'vitest';
import { coachBag } from '../../src/coach/coach-bag.js';
import { coachPairOf } from '../support/coach-answer.js';
import { said } from '../support/said.js';

const bagOf = (hooks: readonly number[], hookStartFt = 40) =>
  coachBag(hooks.map((totalHookBoards, i) => coachPairOf(`ball ${i + 1}`, { totalHookBoards, hookStartFt })));

test('coachBag: two balls with the same reaction are named, others are not', () => {
  expect(bagOf([20, 20.5, 30]).alike).toEqual([['ball 1', 'ball 2']]);
  expect(bagOf([20, 24, 28]).alike).toEqual([]);
});

test('coachBag: the same hook at another place is another ball', () => {
  const bag = coachBag([coachPairOf('early', { hookStartFt: 37 }), coachPairOf('late', { hookStartFt: 43 })]);
  expect(bag.alike).toEqual([]);
});

test('coachBag: a step much wider than the others is a gap, even steps are none', () => {
  expect(bagOf([20, 22.5, 25, 27.5]).gaps).toEqual([]);
  expect(bagOf([20, 22, 24, 36]).gaps).toEqual([{ fromBoards: 24, toBoards: 36 }]);
  expect(said(bagOf([20, 22, 24, 36]).says.slice(-1))).toBe(
    'No ball lies between ball 3 (24.0 boards of hook) and ball 4 (36.0).',
  );
});
