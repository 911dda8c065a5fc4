import { expect, test } from 'vitest';
import { apartDrawing, widestGap } from '../../../src/report/drawings/apart-drawing.js';
import { laneDrawing } from '../../../src/report/drawings/lane-drawing.js';
import { columnsOf } from '../../../src/report/text/wrap.js';
import { pageOf } from '../../support/page.js';
import { lane, line, pathOf, reaction } from '../../support/recommend-answer.js';

/** Farthest apart at 38 ft, where the breakpoints lie. */
const shots = [
  { sign: '1', path: pathOf(7.5) },
  { sign: '2', path: pathOf(8.5) },
  { sign: '3', path: pathOf(7.1) },
];
const oneLine = (lines: readonly string[]): string => lines.join(' ').replace(/\s+/g, ' ');
/** The rows of the drawing, from the pins to the foul line, behind the column of distances. */
const rowsOf = (lines: readonly string[]): string[] => lines.slice(0, 21).map((row) => row.slice(6));

test('widestGap: the most boards between the first path and any other', () => {
  expect(widestGap(shots)).toBeCloseTo(1, 9);
  expect(widestGap(shots.slice(0, 1))).toBe(0);
});

test.each(['right', 'left'] as const)(
  'apartDrawing: each sign stands as many boards from the middle as its path from the first (%s hand)',
  (hand) => {
    const lines = apartDrawing(shots, hand, pageOf(80));
    const perBoard = Number(/A board is (\d+) columns/.exec(oneLine(lines))?.[1]);
    expect(perBoard).toBeGreaterThan(1);
    const rows = rowsOf(lines);
    const at39 = rows[7]; // 60 - 3 x 7
    const middle = rows[7].indexOf('│');
    expect(middle).toBeGreaterThan(0);
    for (const [sign, breakBoard] of [
      ['2', 8.5],
      ['3', 7.1],
    ] as const) {
      const apart = pathOf(breakBoard)[78].board - pathOf(7.5)[78].board; // every half foot: at 39 ft
      const toward = hand === 'right' ? -1 : 1;
      expect(at39.indexOf(sign) - middle, sign).toBe(Math.round(apart * perBoard * toward));
    }
    // all leave from one board and meet in the pocket
    for (const row of [rows[0], rows[20]]) expect(row.trim()).toBe('2');
  },
);

test.each([40, 60, 80, 120, 200])(
  'apartDrawing: keeps within %i columns, and says how far it exaggerates',
  (width) => {
    for (const ascii of [false, true]) {
      const lines = apartDrawing(shots, 'right', pageOf(width, { ascii }));
      for (const each of lines) expect(columnsOf(each), each).toBeLessThanOrEqual(width);
      expect(oneLine(lines)).toMatch(/A board is (\d+) columns wide here: the differences are exaggerated/);
      if (ascii) expect(lines.join('')).toMatch(/^[\x20-\x7e]*$/);
    }
  },
);

const drawn = (boards: readonly number[]) =>
  laneDrawing(
    {
      hand: 'right',
      lane,
      shots: boards.map((board, i) => ({
        sign: `${i + 1}`,
        text: `layout ${i}`,
        line,
        path: pathOf(board),
        reaction,
      })),
    },
    pageOf(80),
  );

test('laneDrawing: paths that share their boards are drawn by their differences, those that part as paths', () => {
  const close = oneLine(drawn([7.5, 8.5]));
  expect(close).toContain('Above is the path of 1 alone');
  expect(close).toContain('Boards from the path of 1');
  expect(close).toContain('Paths differ most at 38 ft: 2 lies 1.0 boards from 1.');
  const far = oneLine(drawn([7.5, 11.5]));
  expect(far).toContain('Signs stand in every third row');
  expect(far).not.toContain('Boards from the path of 1');
});
