import { parseFraction } from './parse-fraction.js';
import { plainSigns } from './plain-signs.js';

/** Far longer than any layout that a person types. */
const MOST_SIGNS = 200;

/**
 * The numbers of a layout as typed, with their units and marks: what stands between `x`, `×`, `*` or `by`.
 *
 * Slashes part them too where only one pair of slashes does so: `70 / 4 1/2 / 30`, but not `70/4/1/2/30`.
 */
export function splitLayout(text: string): readonly string[] {
  if (text.length > 10 * MOST_SIGNS) return [text];
  const plain = plainSigns(text);
  const parts = plain.split(/[x×✕✖⨯*]|by/i);
  const ways = parts.length === 1 && plain.length <= MOST_SIGNS ? bySlashes(plain) : [];
  return (ways.length === 1 ? ways[0] : parts).map((part) => part.trim());
}

/** All ways to part a text in three by two of its slashes, each part a number with or without unit or mark. */
function bySlashes(text: string): readonly (readonly string[])[] {
  const slashes = [...text].flatMap((sign, i) => (sign === '/' ? [i] : []));
  if (slashes.length > MOST_SLASHES) return [];
  return slashes.flatMap((first, i) =>
    slashes.slice(i + 1).flatMap((second) => {
      const parts = [text.slice(0, first), text.slice(first + 1, second), text.slice(second + 1)];
      return parts.every(isNumber) ? [parts] : [];
    }),
  );
}

/** Of three fractions, and the two between them. */
const MOST_SLASHES = 5;

const isNumber = (part: string): boolean => !Number.isNaN(parseFraction(part.replace(/[a-z°"' ,.]*$/i, '')));
