import { boardAt } from '../lane/board-at.js';
import { LENGTH_FT } from '../lane/lane-marks.js';
import { glyphs, type Page } from '../text/page.js';
import { paragraph } from '../text/section.js';
import type { DrawnShot } from './drawn-shot.js';

type SignedPath = Pick<DrawnShot, 'sign' | 'path'>;

const FEET_PER_ROW = 3;
const FEET_PER_LABEL = 15;
const LEFT = '     ';

/** Columns to either side of the first path, at most. */
const MOST_HALF = 35;

/** Columns that a board may take. */
const PER_BOARD = [100, 40, 20, 10, 5, 4, 2, 1];

/**
 * How far paths lie from the first one, pins at the top: a row is three feet, and a board takes as many columns as there is room for,
 * so that paths which share their boards on a drawing of the lane stand apart.
 */
export function apartDrawing(shots: readonly SignedPath[], hand: 'right' | 'left', page: Page): string[] {
  const [first, ...others] = shots;
  const half = Math.min(MOST_HALF, Math.floor((page.width - LEFT.length - 3) / 2));
  const perBoard = PER_BOARD.find((columns) => columns * widestGap(shots) <= half) ?? 1;
  const toColumn = hand === 'right' ? -perBoard : perBoard;
  const { edge } = glyphs(page);
  const rows: string[] = [];
  for (let ft = LENGTH_FT; ft >= 0; ft -= FEET_PER_ROW) {
    const cells = Array.from({ length: 2 * half + 1 }, () => ' ');
    const own = boardAt(first.path, ft);
    if (own !== null) cells[half] = page.paint.quiet(edge);
    for (const { sign, path } of [...others].reverse()) {
      const board = boardAt(path, ft);
      if (own === null || board === null) continue;
      const column = half + Math.round((board - own) * toColumn);
      if (column >= 0 && column < cells.length) cells[column] = page.paint.strong(sign);
    }
    const label = ft % FEET_PER_LABEL === 0 ? page.units.laneMark.show(ft) : '';
    rows.push(`${page.paint.quiet(`${label.padStart(LEFT.length - 1)} `)} ${cells.join('')}`);
  }
  rows.push(
    page.paint.quiet(`${page.units.laneMark.name.padStart(LEFT.length - 1)}  ${scale(half, perBoard, hand)}`),
  );
  return [
    ...rows.map((line) => line.trimEnd()),
    ...paragraph(
      `Boards from the path of ${first.sign}, the line in the middle. ${exaggerated(perBoard)}`,
      page,
      page.paint.quiet,
    ),
  ];
}

const exaggerated = (perBoard: number): string =>
  perBoard === 1
    ? 'A board is one column wide.'
    : `A board is ${perBoard} columns wide here: the differences are exaggerated.`;

/** Boards between the first path and whichever lies farthest from it. */
export const widestGap = ([first, ...others]: readonly SignedPath[]): number =>
  Math.max(
    0,
    ...others.flatMap(({ path }) =>
      path.map(({ distanceFt, board }) => {
        const there = first ? boardAt(first.path, distanceFt) : null;
        return there === null ? 0 : Math.abs(board - there);
      }),
    ),
  );

/** Columns between two numbers of the scale, at least. */
const LEAST_APART = 8;

/** Boards toward the own gutter and away from it, 0 in the middle. */
function scale(half: number, perBoard: number, hand: 'right' | 'left'): string {
  const cells = Array.from({ length: 2 * half + 1 }, () => ' ');
  const step = [0.1, 0.25, 0.5, 1, 2, 5, 10].find((boards) => boards * perBoard >= LEAST_APART) ?? 10;
  const most = Math.floor(half / perBoard / step);
  for (let i = -most; i <= most; i += 1) {
    const boards = i * step;
    const text = boards === 0 ? '0' : `${boards > 0 ? '+' : '-'}${Math.abs(boards)}`;
    const column = half + Math.round(boards * perBoard) * (hand === 'right' ? -1 : 1);
    const start = column - Math.floor(text.length / 2);
    if (start >= 0 && start + text.length <= cells.length) cells.splice(start, text.length, ...text);
  }
  return cells.join('').trimEnd();
}
