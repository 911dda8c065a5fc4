import { expect, test } from 'vitest';
import { answerErrors, quantile } from '../oracles/answer-error.js';

/* The slow check of the same name does this for a thousand shots. */
test('at the setting for answers, 60 random shots err by at most 0.05 board, and all but a few by 0.02° of entry angle', () => {
  const { boards, entryDegrees, grazing } = answerErrors(60);
  expect(boards.length).toBe(60);
  expect(grazing.length).toBeLessThanOrEqual(3);
  expect(quantile(boards, 1)).toBeLessThanOrEqual(0.05);
  expect(quantile(boards, 0.5)).toBeLessThanOrEqual(0.002);
  expect(quantile(entryDegrees, 0.95)).toBeLessThanOrEqual(0.02);
  expect(quantile(entryDegrees, 1)).toBeLessThanOrEqual(0.1);
});
