import stringWidth from 'string-width';

/** A text of letters, digits and signs that take one column each: finding that out is far cheaper than looking each up. */
const ONE_COLUMN_EACH = /^[ -~\u00a0-\u00ac\u00ae-\u00ff\u2013\u2019]*$/;

/** Columns a text takes in a terminal: colour codes none, East Asian wide characters two. */
export const columnsOf = (text: string): number =>
  ONE_COLUMN_EACH.test(text) ? text.length : stringWidth(text);

/**
 * Breaks a text into lines of at most `width` columns, between words where it can.
 *
 * A word longer than a line is cut; a mixed number, a layout, and a number with its
 * unit stay together. Wrap first and paint after: a colour must not run over a line's end.
 *
 * @param indent  put before every line
 * @param first   put before the first line instead; as wide as `indent`
 */
export function wrap(text: string, width: number, indent = '', first = indent): string[] {
  const lines = linesWithin(text, Math.max(1, width - columnsOf(indent)), columnsOf);
  return lines.map((each, i) => (i === 0 ? first : indent) + each);
}

/**
 * The same for any measure of width: points of a typeface, say.
 *
 * @param room     of a line, in the unit of `widthOf`
 * @param widthOf  a text on one line
 */
export function linesWithin(text: string, room: number, widthOf: (text: string) => number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of words(text).flatMap((each) => pieces(each, room, widthOf))) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && widthOf(longer) > room) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  if (line !== '') lines.push(line);
  return lines.map((each) => each.replaceAll(JOINED, ' '));
}

/** A space that is not broken at: in `4 1/2`, in a layout, and between a number and its unit. */
const JOINED = '\u00a0';

const words = (text: string): string[] =>
  joined(text)
    .split(/[^\S\u00a0]+/)
    .filter(Boolean);

/** A text with its mixed numbers, layouts, deviations, and numbers with their units held together by no-break spaces. */
export const joined = (text: string): string =>
  text
    .replace(/(?<=\d) (?=\d+\/\d|x \d|(?:in|ft|lb|oz|mph|mm|m|kg|g|km\/h|rpm|deg|%)(?![a-z]))/g, JOINED)
    .replace(/(?<=\d\u00a0x|±) (?=\d)/g, JOINED);

/** A word in parts that each fit the room. */
function pieces(word: string, room: number, widthOf: (text: string) => number): string[] {
  if (widthOf(word) <= room) return [word];
  const parts: string[] = [''];
  for (const sign of word) {
    if (widthOf((parts.at(-1) as string) + sign) > room && parts.at(-1) !== '') parts.push('');
    parts[parts.length - 1] += sign;
  }
  return parts;
}

/** Sets items one after the other, three columns apart, never breaking one unless it alone is too wide. */
export function flow(items: readonly string[], width: number, indent = ''): string[] {
  const gap = '   ';
  const lines: string[] = [];
  for (const item of items) {
    const last = lines.at(-1);
    if (last !== undefined && columnsOf(last + gap + item) <= width)
      lines[lines.length - 1] = last + gap + item;
    else lines.push(...wrap(item, width, indent));
  }
  return lines;
}
