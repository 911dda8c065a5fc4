import { describe, expect, test } from 'vitest';
import { type Answers, answered, numberAnswered, UNKNOWN } from '../../src/interview/answers.js';
import type { QuestionEntry } from '../../src/interview/question.js';

describe('answers', () => {
  const answers: Answers = { weightLb: 15, speedMph: UNKNOWN, hand: 'left' };

  test('one that must be there is handed out, or its lack is our own mistake', () => {
    expect(answered(answers, 'hand')).toBe('left');
    expect(() => answered(answers, 'rgIn')).toThrow('no answer to rgIn');
  });

  test('a number that is not known, or not yet, is NaN', () => {
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
      text: '?',
      help: '.',
      // @ts-expect-error: it is neither hand
      options: [{ value: 'middle', label: 'Middle' }],
    };
    // @ts-expect-error: a hand is chosen, not typed
    const typed: QuestionEntry = { id: 'hand', kind: 'text', text: '?', help: '.' };
    expect([heavy, middle, typed]).toHaveLength(3);
  });
});
