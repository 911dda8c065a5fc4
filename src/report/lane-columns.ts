import { BOARD_COUNT, LANE_WIDTH } from '../constants.js';
import { INCH } from '../units.js';

type Hand = 'right' | 'left';

/** Column (0 at the left edge) of a board counted from the bowler's own side; outside 0..38 in a gutter. */
export function boardColumn(board: number, hand: Hand): number {
  const nearest = Math.round(board);
  return hand === 'right' ? BOARD_COUNT - nearest : nearest - 1;
}

/** The two columns of the pocket, boards 17 and 18 from the bowler's own side (USBC pin-carry work, seen in a copy). */
export const pocketColumns = (hand: Hand): number[] => [17, 18].map((board) => boardColumn(board, hand));

/** Pin centres stand 12 in apart (USBC lane specifications, seen in a copy). */
const PIN_SPACING = 12 * INCH;

/** Four rows of pins by number, farthest first, each as wide as the lane. */
export function pinDeck(): string[] {
  const rows: string[] = [];
  let pin = 1;
  for (let row = 0; row < 4; row += 1) {
    const cells = Array.from({ length: BOARD_COUNT }, () => ' ');
    for (let i = 0; i <= row; i += 1) {
      const acrossBoards = ((i - row / 2) * PIN_SPACING) / (LANE_WIDTH / BOARD_COUNT);
      const column = (BOARD_COUNT - 1) / 2 + Math.round(acrossBoards);
      cells.splice(column, `${pin}`.length, ...`${pin}`);
      pin += 1;
    }
    rows.unshift(cells.join(''));
  }
  return rows;
}

/** Numbers of every fifth board, the last digit of each in its board's column; the last of them where a board has several. */
export function boardScale(hand: Hand, columnsPerBoard = 1): string {
  const cells = Array.from({ length: BOARD_COUNT * columnsPerBoard }, () => ' ');
  for (let board = 5; board < BOARD_COUNT; board += 5) {
    const digits = [...`${board}`];
    const end = (boardColumn(board, hand) + 1) * columnsPerBoard;
    cells.splice(end - digits.length, digits.length, ...digits);
  }
  return cells.join('');
}
