import { expect, test } from 'vitest';
import { judge } from './effects.js';
import type { Claim } from './levers.js';
import { mapQuantities } from './quantities.js';

const CLAIM: Claim = { quantity: 'flare', expects: -1, words: 'less flare' };
const SCATTER = mapQuantities(() => 2);
const corners = (...changes: number[]) => ({ corners: changes.map((flare) => mapQuantities(() => flare)) });

test.each([
  { why: 'all corners follow it', changes: [-1, -1, -1, -1], word: 'agrees', counts: [4, 0, 0] },
  { why: 'three of four do', changes: [-1, -1, -1, 1], word: 'agrees', counts: [3, 0, 1] },
  { why: 'three of four go the other way', changes: [1, 1, 1, -1], word: 'disagrees', counts: [1, 0, 3] },
  {
    why: 'changes stay under a fifth of the scatter',
    changes: [0.39, -0.39, 0, -1],
    word: 'no effect',
    counts: [1, 3, 0],
  },
  { why: 'corners differ', changes: [-1, -1, 1, 0], word: 'depends', counts: [2, 1, 1] },
] as const)('judge: a claim gets “$word” when $why', ({ changes, word, counts }) => {
  const verdict = judge(CLAIM, corners(...changes), SCATTER);
  expect(verdict.word).toBe(word);
  expect([verdict.holds, verdict.unseen, verdict.opposite]).toEqual(counts);
});
