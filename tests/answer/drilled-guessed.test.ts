import { expect, test } from 'vitest';
import { drilledAnswer } from '../../src/answer/drilled-answer.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { averageBowler, plainBall } from '../support/problems.js';

test('a drilled ball says which numbers its marks rest on that were guessed', () => {
  const codes = (uncertainty: object | undefined) =>
    drilledAnswer(
      { bowler: { ...averageBowler, uncertainty }, ball: plainBall, layout: MIDDLE_LAYOUT },
      { ounce: 'moment' },
    ).assumptions.filter(({ code }) => code.startsWith('uncertain'));
  expect(codes(undefined)).toEqual([]);
  expect(codes({ speedMph: 1 })).toEqual([]); // no mark rests on it
  expect(codes({ speedMph: 1, papOverIn: 0.4, papUpIn: 0.45 })).toEqual([
    { code: 'uncertain-release', params: { papOverIn: 0.4, papUpIn: 0.45 } },
  ]);
});
