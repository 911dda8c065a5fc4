import { expect, test } from 'vitest';
import { drilledAnswerSchema } from '../../src/records/answers/drilled-answer.js';
import { recommendAnswerSchema } from '../../src/records/answers/recommend-answer.js';
import { rollAnswerSchema } from '../../src/records/answers/roll-answer.js';
import { withSentences } from '../../src/report/wording/with-sentences.js';
import { drilledAnswer, recommendAnswer, rollAnswer } from '../support/recommend-answer.js';

test('the answers made up for these tests have the shape of real ones', () => {
  expect(recommendAnswerSchema.safeParse(withSentences(recommendAnswer)).error).toBeUndefined();
  expect(drilledAnswerSchema.safeParse(withSentences(drilledAnswer)).error).toBeUndefined();
  expect(rollAnswerSchema.safeParse(withSentences(rollAnswer)).error).toBeUndefined();
});
