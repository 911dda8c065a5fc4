import { expect, test } from 'vitest';
import { parseRecord } from '../../../src/records/read/read-record.js';
import { WISHES, wishWords } from '../../../src/records/schemas/reaction-numbers.js';
import { isNoWish, readWish } from '../../../src/records/schemas/read-wish.js';
import { wantSchema } from '../../../src/records/schemas/want.js';
import { inputErrorOf } from '../../support/faults-of.js';

test('readWish: each step is read from its number, its digit and its word', () => {
  for (const wish of WISHES)
    for (const [i, word] of wishWords(wish).steps.entries())
      for (const given of [i + 1, String(i + 1), word, ` ${word.toUpperCase()} `])
        expect(readWish(wish, given), `${wish} ${given}`).toEqual({ step: i + 1, number: null });
});

// biome-ignore format: one wish a line
test.each([
  ['hookStart', '41 ft', 41],
  ['hookStart', '41 feet', 41],
  ['hookStart', "41½'", 41.5],
  ['hookStart', '12.192 m', 40],
  ['hookStart', 'about 41 ft', 41],
  ['totalHook', '22 boards', 22],
  ['totalHook', '22,5 boards', 22.5],
  ['sharpness', '0.35 deg/ft', 0.35],
  ['sharpness', '0,35 °/ft', 0.35],
] as const)('readWish: %s %j is the number %d', (wish, text, number) => {
  const asked = readWish(wish, text);
  if (isNoWish(asked)) throw new Error(asked.rule);
  expect(asked.step).toBeNull();
  expect(asked.number).toBeCloseTo(number, 12);
});

// biome-ignore format: one wish a line
test.each([
  ['hookStart', '41', 'needs its unit: 41 ft'],
  ['hookStart', '6', 'needs its unit'],
  ['hookStart', 'lat', 'Did you mean late?'],
  ['hookStart', '40-42 ft', 'no range'],
  ['hookStart', '41 boards', 'boards is no unit of a length'],
  ['hookStart', '410 ft', '5 is latest'],
  ['totalHook', 'lots', '5 is most'],
  ['hookStart', 0, '1 is earliest'],
  ['hookStart', 4.5, '5 is latest'],
  ['hookStart', '', '5 is latest'],
] as const)('readWish: %s %j is refused: %s', (wish, given, hint) => {
  expect(readWish(wish, given)).toMatchObject({ rule: expect.stringMatching(/^must be /), hint: expect.stringContaining(hint) });
});

test('a want may say a step, a word or a number with its unit; its faults show all three', () => {
  const want = { hookStart: 'late', sharpness: 5, totalHook: '22 boards' };
  expect(parseRecord(wantSchema, want, 'want')).toEqual(want);
  const { faults } = inputErrorOf(() => parseRecord(wantSchema, { hookStart: 6, totalHook: '22' }, 'want'));
  expect(faults).toMatchObject([
    { field: 'hookStart', got: '6', rule: expect.stringMatching(/1 to 5.*late.*"41 ft"/) },
    { field: 'totalHook', got: '"22"', rule: expect.stringMatching(/1 to 5.*most.*"22 boards"/) },
  ]);
});
