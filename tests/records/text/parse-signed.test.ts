import { expect, test } from 'vitest';
import { parseSigned } from '../../../src/records/text/parse-signed.js';

test.each([
  ['4 7/8', 4.875],
  ['+3/8', 0.375],
  ['-1/4', -0.25],
  ['- 1/4', -0.25],
  ['1/4 down', -0.25],
  ['1/4 in Down', -0.25],
  ['3/8 up', 0.375],
  ['5 1/8"', 5.125],
  ['17.5 mph', 17.5],
  ['14°', 14],
  ['15lb', 15],
])('%j is %d', (text, want) => {
  expect(parseSigned(text)).toBe(want);
});

test.each(['', 'up', 'down', '-1/4 down', '+1/4 down', '1/4 left', '--3', '17,5', 'in'])(
  '%j is no number',
  (text) => {
    expect(parseSigned(text)).toBeNaN();
  },
);
