import { expect, test } from 'vitest';
import { bowTieText } from '../../../src/report/wording/bow-tie-text.js';
import { pageOf } from '../../support/page.js';
import { rollAnswer } from '../../support/recommend-answer.js';

test('bowTieText: both crossings in tape arcs from two marks', () => {
  const text = bowTieText(rollAnswer.bowTie, pageOf(80)).join(' ').replace(/\s+/g, ' ');
  expect(text).toContain(
    'toward the fingers, 3 1/2 in from the grip centre and 6 1/2 in from the PAP (to 0.12 in)',
  );
  expect(text).toContain(
    'toward the thumb, 4 3/4 in from the grip centre and 6 1/4 in from the PAP (to 0.14 in)',
  );
});

test('bowTieText: rings that hardly part cross nowhere', () => {
  expect(bowTieText(null, pageOf(80)).join(' ')).toContain('no bow tie');
});
