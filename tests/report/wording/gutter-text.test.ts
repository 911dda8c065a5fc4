import { describe, expect, test } from 'vitest';
import { gutterText, gutterWarning } from '../../../src/report/wording/gutter-text.js';
import { recommendAnswer } from '../../support/recommend-answer.js';

const missing = (best: number, usual: number) => {
  const [first, ...others] = recommendAnswer.layouts;
  return {
    layouts: [{ ...first, gutterShare: best }, ...others.map((each) => ({ ...each, gutterShare: 0.02 }))],
    middle: { ...recommendAnswer.middle, gutterShare: usual },
  } as Parameters<typeof gutterText>[0];
};

describe('how often a ball does not reach the pins', () => {
  test('is told of every layout and of the usual one', () => {
    const text = gutterText(missing(0.45, 0.44));
    expect(text).toContain(
      '70 x 4 1/2 x 30 45; 85 x 3 3/4 x 45 2; 55 x 5 1/4 x 35 2; the usual 45 x 4 x 45 44.',
    );
  });

  test('is said first from 5 in 100 on, and not below', () => {
    expect(gutterWarning(missing(0.45, 0.44))).toEqual([
      'In 45 of 100 simulated tries the ball does not reach the pins (the usual layout: 44).',
    ]);
    expect(gutterWarning(missing(0.049, 0.3))).toEqual([]);
  });
});
