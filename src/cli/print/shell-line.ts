import { columnsOf } from '../../report/text/wrap.js';

/** A word as POSIX shells read it back: as it is where it is plain, else in quotes. */
export const quoted = (word: string): string =>
  /^[\w@%+=:,./-]+$/.test(word)
    ? word
    : /^[^"$`\\!]*$/.test(word)
      ? `"${word}"`
      : `'${word.replaceAll("'", "'\\''")}'`;

/** A command line, ready to paste: broken before a flag, with a backslash, where it is wider than the page. */
export function shellLines(words: readonly string[], width: number): string[] {
  const parts: string[] = [];
  for (const word of words) {
    const isValue = parts.length > 0 && !word.startsWith('--') && parts.at(-1)?.startsWith('--');
    if (isValue) parts[parts.length - 1] += ` ${quoted(word)}`;
    else parts.push(quoted(word));
  }
  const lines: string[] = [];
  for (const part of parts) {
    const last = lines.at(-1);
    if (last !== undefined && columnsOf(`${last} ${part} \\`) <= width)
      lines[lines.length - 1] = `${last} ${part}`;
    else lines.push(last === undefined ? part : `  ${part}`);
  }
  return lines.map((line, i) => (i < lines.length - 1 ? `${line} \\` : line));
}
