import { expect, test } from 'vitest';
import { nearestBall } from '../../src/coach/nearest-ball.js';
import type { TargetAnswer } from '../../src/records/answers/answer.js';
import { coachPairOf } from '../support/coach-answer.js';

/** A ball whose best layout hooks so many boards; its own layouts make its target and what it attains. */
const ball = (name: string, boards: number, target: Partial<TargetAnswer>, score = 99) =>
  coachPairOf(
    name,
    { totalHookBoards: boards },
    {
      targets: [
        {
          wish: 'totalHook',
          step: 3,
          reading: 'totalHookBoards',
          value: boards,
          attainable: { low: boards - 2, high: boards + 2 },
          ...target,
        },
      ],
      best: { ...coachPairOf(name, { totalHookBoards: boards }).best, meanScore: score },
    },
  );

test.each([
  // each ball does exactly what was asked for of its own layouts: only a common target tells them apart
  { step: 5, hooks: [10, 20, 15], best: 'b' },
  { step: 1, hooks: [10, 20, 15], best: 'a' },
  { step: 3, hooks: [10, 20, 15], best: 'c' },
  // 8 to 22 boards are attained: 18.5 at step 4, 11.5 at step 2
  { step: 4, hooks: [10, 20, 15], best: 'b' },
  { step: 2, hooks: [10, 20, 15], best: 'a' },
])('nearestBall: at step $step of $hooks boards, $best', ({ step, hooks, best }) => {
  const pairs = hooks.map((boards, i) => ball('abc'[i], boards, { step }, 100 - boards));
  expect(nearestBall(pairs)).toBe(best);
});

test('nearestBall: a number that was asked for counts, though a ball cannot attain it', () => {
  const asked = { step: null, asked: 18 };
  const pairs = [ball('a', 10, { ...asked, value: 12 }), ball('b', 17, { ...asked, value: 18 })];
  expect(nearestBall(pairs)).toBe('b');
});

test('nearestBall: without a wish the greatest mean score; one ball is its own best', () => {
  const free = [ball('a', 10, {}, 70), ball('b', 17, {}, 80)].map((pair) => ({ ...pair, targets: [] }));
  expect(nearestBall(free)).toBe('b');
  expect(nearestBall(free.slice(0, 1))).toBe('a');
});
