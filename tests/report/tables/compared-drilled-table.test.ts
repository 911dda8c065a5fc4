import { expect, test } from 'vitest';
import { comparedAxisGrid, comparedDrilledGrid } from '../../../src/report/tables/compared-drilled-table.js';
import { compareAnswer } from '../../support/compare-answer.js';
import { pageOf } from '../../support/page.js';

const page = pageOf(80);
const [first, second] = compareAnswer.rows as [
  (typeof compareAnswer.rows)[number],
  (typeof compareAnswer.rows)[number],
];

test('the ball as made stands above its layouts once, and without bands', () => {
  const { columns, rows } = comparedDrilledGrid(compareAnswer.rows, page);
  expect(columns).toHaveLength(7);
  expect(rows).toHaveLength(1 + compareAnswer.rows.length);
  expect(rows[0]).toEqual(['undrilled', '2.534', '', '0.037', '', '0.001', '']);
});

test('of several balls, each stands below its own numbers as made', () => {
  const names = comparedDrilledGrid([first, { ...second, ball: 'Another' }], page).rows.map(([name]) => name);
  expect(names).toEqual(['1 undrilled', `1 ${first.name}`, '2 undrilled', `2 ${second.name}`]);
});

/** The first with a core that is known. */
const known = (() => {
  const { rgIn, differentialIn, intermediateDifferentialIn } = first.drilled;
  const at = (value: number) => ({ low: value, high: value });
  const drilled = {
    rgIn: at(rgIn),
    differentialIn: at(differentialIn),
    intermediateDifferentialIn: at(intermediateDifferentialIn),
  };
  return { ...first, bands: { ...first.bands, drilled } };
})();

test('beside a fitted core, one that is known has no bands either: its cells are empty', () => {
  const [, ownCells, fittedCells] = comparedDrilledGrid([known, second], page).rows;
  const bandsIn = (cells: readonly unknown[]) => cells.filter((_, i) => i > 0 && i % 2 === 0);
  expect(bandsIn(ownCells!)).toEqual(['', '', '']);
  expect(bandsIn(fittedCells!)).toEqual([
    expect.stringContaining('–'),
    expect.stringContaining('–'),
    expect.stringContaining('–'),
  ]);
});

test('a core that is known has no bands, and the table no columns for them', () => {
  const { columns, rows } = comparedDrilledGrid([known, known], page);
  expect(columns).toHaveLength(4);
  expect(rows.map((cells) => cells.length)).toEqual([4, 4, 4]);
});

test('beside a ball with a mass-bias mark, one without leaves the arc from it blank', () => {
  const marked = { ...first, psa: { ...first.psa, fromMarkIn: 1.5 } };
  const plain = { ...second, psa: { ...second.psa, fromMarkIn: null } };
  const { columns, rows } = comparedAxisGrid([marked, plain], page);
  const mark = columns.findIndex(({ head }) => head.startsWith('from mark'));
  expect(rows.map((cells) => cells[mark])).toEqual(['1 1/2', '']);
  expect(new Set(rows.map((cells) => cells.length))).toEqual(new Set([columns.length]));
});
