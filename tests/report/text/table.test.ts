import { expect, test } from 'vitest';
import { table } from '../../../src/report/text/table.js';
import { pageOf } from '../../support/page.js';

const columns = [{ head: 'name' }, { head: 'first\nft' }, { head: 'second\nin' }];
const rows = [
  ['plain', '1.0', '20'],
  ['lobed', '10.5', '3'],
];

test('table: numbers stand right-aligned under their heads', () => {
  expect(table(columns, rows, pageOf(60))).toEqual([
    '  name   first  second',
    '            ft      in',
    '  plain    1.0      20',
    '  lobed   10.5       3',
  ]);
});

test('table: columns that do not fit follow below with the first column repeated, so nothing is lost', () => {
  expect(table(columns, rows, pageOf(16))).toEqual([
    '  name   first',
    '            ft',
    '  plain    1.0',
    '  lobed   10.5',
    '',
    '  name   second',
    '             in',
    '  plain      20',
    '  lobed       3',
  ]);
});

test('table: without any head there is no head row', () => {
  expect(table([{ head: '' }, { head: '' }], [['a', '1']], pageOf(60))).toEqual(['  a  1']);
});
