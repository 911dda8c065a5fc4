import { parseFraction } from './layout-text.js';
import { singleBlanks } from './single-blanks.js';

/**
 * A number as typed: `4 7/8`, `-1/4`, `1/4 down`, `3/8 up`, with or without its unit; NaN when it is none.
 *
 * A sign together with a word is refused, since `-1/4 down` may mean either.
 */
export function parseSigned(text: string): number {
  const match = /^([+-]?) ?(.*?) ?(up|down)?$/i.exec(singleBlanks(text));
  if (!match || (match[1] && match[3])) return Number.NaN;
  const size = parseFraction(
    (match[2] ?? '').replace(/ ?(in|inches|"|mph|rpm|deg|degrees|°|lb|oz|grit)$/i, ''),
  );
  const isDown = match[3]?.toLowerCase() === 'down';
  return (match[1] === '-') !== isDown ? -size : size;
}
