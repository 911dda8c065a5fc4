import { expect, test } from 'vitest';
import {
  drilledAnswerSchema,
  recommendAnswerSchema,
  rollAnswerSchema,
} from '../../src/records/answers/answer.js';
import { drilledAnswer, recommendAnswer, rollAnswer } from '../support/recommend-answer.js';

test('the answers made up for these tests have the shape of real ones', () => {
  expect(recommendAnswerSchema.safeParse(recommendAnswer).error).toBeUndefined();
  expect(drilledAnswerSchema.safeParse(drilledAnswer).error).toBeUndefined();
  expect(rollAnswerSchema.safeParse(rollAnswer).error).toBeUndefined();
});
