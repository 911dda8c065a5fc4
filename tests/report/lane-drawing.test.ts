import { expect, test } from 'vitest';
import { boardAt } from '../../src/report/board-at.js';
import { type DrawnShot, laneDrawing } from '../../src/report/lane-drawing.js';
import { lane, line, pathOf, reaction } from './fixture.js';
import { pageOf } from './page.js';

const shot = (hand: 'right' | 'left'): DrawnShot => ({
  hand,
  lane,
  line,
  path: pathOf(7.5),
  reaction,
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
      const board = Math.round(boardAt(shot(hand).path, ft) as number);
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
    const oiled = /[░·]/.test(row);
    expect(oiled, `${60 - 3 * i} ft`).toBe(60 - 3 * i <= 36);
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
    ...shot('right'),
    path: pathOf(7.5)
      .slice(0, 81)
      .map((point) => ({ ...point, board: 8 - point.distanceFt / 4 })),
    reaction: { ...reaction, outcome: 'gutter' },
  };
  const lines = laneDrawing(gutter, pageOf(80));
  expect(lines.some((line) => /│.{39}[○◐●]/.test(line))).toBe(true);
  expect(lines.join('\n')).toContain('in the gutter at 40.0 ft');
});

test('laneDrawing: says when no line to the pocket was found', () => {
  const missed = { ...shot('right'), line: { ...line, reachesPocket: false } };
  expect(laneDrawing(missed, pageOf(80)).join('\n')).toContain('No line was found');
  expect(laneDrawing(shot('right'), pageOf(80)).join('\n')).not.toContain('No line was found');
});

test.each([60, 80])('laneDrawing: every note is there at %i columns', (width) => {
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
