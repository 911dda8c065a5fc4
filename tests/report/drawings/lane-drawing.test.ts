import { describe, expect, test } from 'vitest';
import type { DrawnShot } from '../../../src/report/drawings/drawn-shot.js';
import { type DrawnLane, laneDrawing } from '../../../src/report/drawings/lane-drawing.js';
import { boardAt } from '../../../src/report/lane/board-at.js';
import { pageOf } from '../../support/page.js';
import { lane, line, pathOf, reaction } from '../../support/recommend-answer.js';

const one: DrawnShot = { sign: '1', text: '70 x 4 1/2 x 30', line, path: pathOf(7.5), reaction };
const shot = (hand: 'right' | 'left', only = one): DrawnLane => ({ hand, lane, shots: [only] });

/** Three paths that part: the second and the third hook from farther out and earlier. */
const three = (hand: 'right' | 'left'): DrawnLane => ({
  hand,
  lane,
  shots: [
    one,
    { ...one, sign: '2', path: pathOf(4.2), reaction: { ...reaction, hookStartFt: 30 } },
    { ...one, sign: '*', path: pathOf(11.3), reaction: { ...reaction, rollsBeforePins: false } },
  ],
});

/** The lane's rows, farthest first, each 39 signs between the edges; and the line of board numbers. */
function read(lines: readonly string[]) {
  const rows = lines.flatMap((line) => /^.{5}[│|](.{39})[│|]/.exec(line)?.[1] ?? []);
  const scale = lines.find((line) => line.endsWith('board')) ?? '';
  return { rows, scale };
}

/** Column of a numbered board as printed under the lane: that of its number's last digit. */
const columnUnder = (scale: string, board: number): number => {
  const at = new RegExp(`(?<!\\d)${board}(?!\\d)`).exec(scale);
  return (at?.index ?? Number.NaN) + `${board}`.length - 1 - 6;
};

test.each(['right', 'left'] as const)(
  'laneDrawing: the path stands on its board in every row (%s hand)',
  (hand) => {
    const { rows, scale } = read(laneDrawing(shot(hand), pageOf(80)));
    expect(rows).toHaveLength(21);
    const [five, ten] = [columnUnder(scale, 5), columnUnder(scale, 10)];
    const columnsPerBoard = (ten - five) / 5;
    expect(columnsPerBoard).toBe(hand === 'right' ? -1 : 1);
    rows.forEach((row, i) => {
      const ft = 60 - 3 * i;
      const board = Math.round(boardAt(one.path, ft) as number);
      expect(row.search(/[○◐●]/), `${ft} ft`).toBe(five + columnsPerBoard * (board - 5));
    });
  },
);

test('laneDrawing: the glyph says the phase by distance, without colour', () => {
  const { rows } = read(laneDrawing(shot('right'), pageOf(80)));
  rows.forEach((row, i) => {
    const ft = 60 - 3 * i;
    const phase = ft < reaction.hookStartFt ? '○' : ft < reaction.rollStartFt ? '◐' : '●';
    expect(row).toContain(phase);
  });
});

test('laneDrawing: oil ends where the pattern ends', () => {
  const { rows } = read(laneDrawing(shot('right'), pageOf(80)));
  rows.forEach((row, i) => {
    const oiled = /[·░▒▓█]/.test(row);
    expect(oiled, `${60 - 3 * i} ft`).toBe(60 - 3 * i <= 40);
  });
});

test('laneDrawing: a left-hander is the mirror image on a lane that is its own mirror image', () => {
  const mirrored = (line: string): string => [...line].reverse().join('');
  const right = read(laneDrawing(shot('right'), pageOf(80))).rows;
  const left = read(laneDrawing(shot('left'), pageOf(80))).rows;
  expect(left).toEqual(right.map(mirrored));
});

test('laneDrawing: a ball in the gutter is drawn on the edge and said', () => {
  const gutter: DrawnShot = {
    ...one,
    path: pathOf(7.5)
      .slice(0, 81)
      .map((point) => ({ ...point, board: 8 - point.distanceFt / 4 })),
    reaction: { ...reaction, outcome: 'gutter' },
  };
  const lines = laneDrawing(shot('right', gutter), pageOf(80));
  expect(lines.some((line) => /│.{39}[○◐●]/.test(line))).toBe(true);
  expect(lines.join('\n')).toContain('in the gutter at 40.0 ft');
});

test('laneDrawing: says when no line to the pocket was found', () => {
  const missed = shot('right', { ...one, line: { ...line, reachesPocket: false } });
  expect(laneDrawing(missed, pageOf(80)).join('\n')).toContain('No line was found');
  expect(laneDrawing(shot('right'), pageOf(80)).join('\n')).not.toContain('No line was found');
});

test.each([40, 60, 80])('laneDrawing: every note is there at %i columns', (width) => {
  const text = laneDrawing(shot('right'), pageOf(width)).join('\n');
  for (const note of [
    'laid down on board 20.0',
    'over board 15.1 at 15 ft',
    'hook starts at 38.2',
    'widest: board 7.6',
    'rolls from 51.6',
    'coming in at 5.1',
  ])
    expect(text).toContain(note);
});

/** The lane's cells in a drawing with so many columns a board. */
const cellsOf = (lines: readonly string[], columns: number): string[] =>
  lines.flatMap((line) => new RegExp(`^.{5}[│|](.{${columns}})[│|]`).exec(line)?.[1] ?? []);

const COLUMNS = 39;

describe.each([
  { width: 60, perBoard: 1 },
  { width: 80, perBoard: 1 },
  { width: 120, perBoard: 2 },
])('laneDrawing with several paths at $width columns', ({ width, perBoard }) => {
  const lines = laneDrawing(three('right'), pageOf(width));
  const rows = cellsOf(lines, COLUMNS * perBoard);
  /** Column that a board's place falls in: the lane's left edge is board 39.5; between two columns the left one. */
  const columnOf = (board: number): number => Math.ceil((39.5 - board) * perBoard) - 1;

  test('each path stands on its board, with the sign of its phase, or every third row with its own', () => {
    expect(rows).toHaveLength(21);
    rows.forEach((row, i) => {
      const ft = 60 - 3 * i;
      const { shots } = three('right');
      shots.forEach(({ sign, path, reaction: { hookStartFt, rollStartFt, rollsBeforePins } }, k) => {
        const column = columnOf(boardAt(path, ft) as number);
        const above = shots.slice(0, k).map((other) => columnOf(boardAt(other.path, ft) as number));
        if (above.includes(column)) return; // a path before it is drawn there
        const phase = ft < hookStartFt ? '○' : ft < rollStartFt || !rollsBeforePins ? '◐' : '●';
        expect([...row][column], `${sign} at ${ft} ft`).toBe(i % 3 === 1 ? sign : phase);
      });
    });
  });

  test('the arrows stand on every fifth board, at 12 and 15 ft, unless a path lies over them', () => {
    const at = (ft: number, board: number): string =>
      [...(rows[(60 - ft) / 3] as string)][(39 - board) * perBoard] as string;
    for (const board of [5, 35]) expect(at(12, board), `${board}`).toBe('^');
    for (const board of [10, 20, 25, 30]) expect(at(15, board), `${board}`).toMatch(/[\^○]/);
    expect(lines.join('\n')).toContain('^ aiming arrow');
  });

  test('the legend names every path, and how far they part', () => {
    const text = lines.join(' ').replace(/\s+/g, ' ');
    for (const sign of ['1', '2', '*']) expect(text).toContain(`${sign} 70 x 4 1/2 x 30`);
    expect(text).toContain('Paths differ most at 38 ft: * lies 3.8 boards from 1.'); // 11.3 - 7.5 where both are widest
  });

  test('a left-hander is the mirror image', () => {
    const left = cellsOf(laneDrawing(three('left'), pageOf(width)), COLUMNS * perBoard);
    // an arrow takes the first of a board's columns from either side
    const plain = (row: string): string => row.replaceAll('^', ' ').replaceAll(/[·░▒▓█]/g, ' ');
    expect(left.map(plain)).toEqual(rows.map((row) => plain([...row].reverse().join(''))));
  });

  test('no line is wider than the page; ASCII only where asked for', () => {
    const ascii = laneDrawing(three('right'), pageOf(width, { ascii: true }));
    for (const line of [...lines, ...ascii]) expect([...line].length, line).toBeLessThanOrEqual(width);
    expect(ascii.join('')).toMatch(/^[\x20-\x7e]*$/);
    expect(cellsOf(ascii, COLUMNS * perBoard).join('')).toMatch(/[o@#]/);
  });
});

test('laneDrawing: paths that are the same are said to be', () => {
  const twins = { ...shot('right'), shots: [one, { ...one, sign: '2' }] };
  expect(laneDrawing(twins, pageOf(80)).join(' ').replace(/\s+/g, ' ')).toContain(
    'Above is the path of 1: the others lie within 0.0 boards of it.',
  );
});
