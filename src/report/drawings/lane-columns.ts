import { BOARD_COUNT } from '../../base/constants.js';
import { PINS, POCKET_BOARDS } from '../lane/lane-marks.js';

type Hand = 'right' | 'left';

/** Column (0 at the left edge) of a board counted from the bowler's own side; outside 0..38 in a gutter. */
export function boardColumn(board: number, hand: Hand): number {
  const nearest = Math.round(board);
  return hand === 'right' ? BOARD_COUNT - nearest : nearest - 1;
}

/** The column a place on a board is in where boards are several columns wide; one more on either side for the gutters. */
export function fineColumn(board: number, hand: Hand, columnsPerBoard: number): number {
  const last = BOARD_COUNT * columnsPerBoard - 1;
  const fromLeft = Math.ceil((BOARD_COUNT + 0.5 - board) * columnsPerBoard) - 1;
  return Math.min(last + 1, Math.max(-1, hand === 'right' ? fromLeft : last - fromLeft));
}

/** The columns of the pocket. */
export const pocketColumns = (hand: Hand, columnsPerBoard: number): number[] =>
  POCKET_BOARDS.flatMap((board) =>
    Array.from({ length: columnsPerBoard }, (_, i) => boardColumn(board, hand) * columnsPerBoard + i),
  );

/** Four rows of pins by number, farthest first, each as wide as the lane. */
export function pinDeck(columnsPerBoard: number): string[] {
  const width = BOARD_COUNT * columnsPerBoard;
  const rows = Array.from({ length: 4 }, () => Array.from({ length: width }, () => ' '));
  PINS.forEach(({ row, acrossBoards }, i) => {
    const column = (width - 1) / 2 + acrossBoards * columnsPerBoard;
    rows[row].splice(Math.round(column), `${i + 1}`.length, ...`${i + 1}`);
  });
  return rows.reverse().map((cells) => cells.join(''));
}

/** Numbers of every fifth board, the last digit of each in its board's column; the last of them where a board has several. */
export function boardScale(hand: Hand, columnsPerBoard: number): string {
  const cells = Array.from({ length: BOARD_COUNT * columnsPerBoard }, () => ' ');
  for (let board = 5; board < BOARD_COUNT; board += 5) {
    const digits = [...`${board}`];
    const end = (boardColumn(board, hand) + 1) * columnsPerBoard;
    cells.splice(end - digits.length, digits.length, ...digits);
  }
  return cells.join('');
}
