import { describe, expect, test } from 'vitest';
import {
  type Answers,
  answered,
  isGuessed,
  numberAnswered,
} from '../../../src/interview/questions/answers.js';
import type { QuestionEntry } from '../../../src/interview/questions/question.js';

describe('answers', () => {
  const answers: Answers = { weightLb: 15, hand: 'left', guessed: ['hand'] };

  test('one that must be there is handed out, or its lack is our own mistake', () => {
    expect(answered(answers, 'hand')).toBe('left');
    expect(() => answered(answers, 'rgIn')).toThrow('no answer to rgIn');
  });

  test('a guess is told from an answer', () => {
    expect(isGuessed(answers, 'hand')).toBe(true);
    expect(isGuessed(answers, 'weightLb')).toBe(false);
  });

  test('a number that is not there is NaN', () => {
    expect(numberAnswered(answers, 'weightLb')).toBe(15);
    expect(numberAnswered(answers, 'speedMph')).toBeNaN();
    expect(numberAnswered(answers, 'rgIn')).toBeNaN();
  });

  test('a misspelt question, and an answer of another one, do not compile', () => {
    // @ts-expect-error: there is no such question
    expect(() => answered(answers, 'wieghtLb')).toThrow();
    // @ts-expect-error: it is answered with a number
    const heavy: Answers = { weightLb: 'heavy' };
    const middle: QuestionEntry = {
      id: 'hand',
      kind: 'choice',
      name: 'Hand',
      text: '?',
      help: '.',
      // @ts-expect-error: it is neither hand
      options: [{ value: 'middle', label: 'Middle' }],
    };
    // @ts-expect-error: a speed is a number, not a text
    const typed: QuestionEntry = { id: 'speedMph', kind: 'text', name: 'Speed', text: '?', help: '.' };
    expect([heavy, middle, typed]).toHaveLength(3);
  });
});
