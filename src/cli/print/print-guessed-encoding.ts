import { shortened, visible } from '../../base/visible.js';
import type { GuessedEncoding } from '../../records/read/list-text.js';
import type { Terminal } from '../terminal/terminal.js';

/** Cells that are named. */
const MOST_NAMED = 5;

/** Prepares to say on stderr that a list was read as Windows-1252, and what to check of it. */
export const printGuessedEncoding =
  ({ stderr }: Pick<Terminal, 'stderr'>) =>
  ({ path, cells }: GuessedEncoding): void => {
    const named = cells.slice(0, MOST_NAMED).map((cell) => visible(shortened(cell, 60)));
    const more = cells.length - named.length;
    stderr.write(
      `${visible(path)} is not UTF-8 and was read as Windows-1252. Check: ${named.join('; ')}${more > 0 ? `; and ${more} more` : ''}.\n`,
    );
  };
