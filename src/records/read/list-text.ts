import { InputError } from '../../base/errors.js';
import { decodedText } from '../text/decoded-text.js';
import { fromWindows1252 } from '../text/windows-1252.js';
import { type FileKind, readBytes } from './read-file.js';

/** A list whose encoding was guessed, and the cells that a wrong guess would have spoilt. */
export interface GuessedEncoding {
  readonly path: string;
  readonly cells: readonly string[];
}

/** Whether a path names a list of comma-separated values, by its ending. */
export const isListFile = (path: string): boolean => /\.(csv|tsv|txt)$/i.test(path);

/**
 * The text of a CSV list: UTF-8, or else Windows-1252, in which many spreadsheets save. Records are UTF-8 always.
 *
 * @param onGuess  is handed what to check where the list is not UTF-8
 * @throws {InputError} as `readBytes` does; `not-utf8` where it is neither
 */
export function readListText(
  path: string,
  kind: FileKind,
  onGuess: (guess: GuessedEncoding) => void,
): string {
  const bytes = readBytes(path, kind);
  try {
    return decodedText(bytes, path);
  } catch (error) {
    const text = error instanceof InputError ? fromWindows1252(bytes) : null;
    if (text === null) throw error;
    onGuess({ path, cells: cellsInDoubt(text) });
    return text;
  }
}

/** The cells below the heads with letters outside ASCII, each once. */
const cellsInDoubt = (text: string): readonly string[] => [
  ...new Set(
    text
      .slice(text.indexOf('\n'))
      .split(/[,;\t\r\n"]+/)
      .map((cell) => cell.trim())
      .filter((cell) => /[^\0-\x7f]/.test(cell)),
  ),
];
