import { visible } from '../../base/visible.js';

/*
 * A spreadsheet runs a cell that begins like a formula, also one in quotes. With an apostrophe in front it is
 * text to all of them.
 */

const FORMULA = /^'*[=+\-@\t\r＝＋－＠]/;

/** A text as a cell of comma-separated values that no spreadsheet runs and that hides nothing. */
export function guardedCell(text: string): string {
  const cell = visible(text);
  return FORMULA.test(cell) ? `'${cell}` : cell;
}

/** The text that such a cell stands for. */
export const unguardedCell = (cell: string): string =>
  cell.startsWith("'") && FORMULA.test(cell) ? cell.slice(1) : cell;
