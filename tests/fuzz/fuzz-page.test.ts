import { expect, test } from 'vitest';
import { fuzzPage, rowsOf } from './fuzz-page.js';
import { TARGETS } from './targets.js';

const rows = TARGETS.map((target, i) => ({
  target,
  counted: {
    inputs: 1000 * i + 7,
    distinct: 1000 * i + 5,
    rules: i,
    outcomes: { accepted: 1000 * i, refused: 1, unworded: 2, crash: 3, 'not finite': 0, slow: 1 },
  },
}));

test('rowsOf: what a page says is read back, also once its table was set out in columns', () => {
  const page = fuzzPage(rows, 1);
  expect(rowsOf(page, TARGETS)).toEqual(rows);
  expect(rowsOf(page.replaceAll(' |', '    |'), TARGETS)).toEqual(rows);
});

test('rowsOf: of targets that are no more, and of other pages, nothing', () => {
  expect(rowsOf(fuzzPage(rows, 1), TARGETS.slice(2, 4))).toEqual(rows.slice(2, 4));
  expect(rowsOf('# Another page\n\n| numbers | 1 | 2 |\n', TARGETS)).toEqual([]);
});
