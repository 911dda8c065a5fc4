import { InputError, quotedTyped } from '../../base/errors.js';
import { ALL_NOTATIONS, readLayout, type WrittenLayout } from '../../records/text/written-layout.js';
import { didYouMean } from '../terminal/did-you-mean.js';

/** The error of a flag that must be there and is not. */
export const missingFlag = (flag: string, hint: string): InputError =>
  new InputError('missing-flag', { field: flag, rule: 'is missing', got: 'nothing', hint });

/**
 * A whole number given to a flag.
 *
 * @throws {InputError} `flag` when it is not a whole number, or out of range
 */
export function wholeNumber(
  flag: string,
  text: string,
  [low, high]: readonly [number, number],
  hint: string,
): number {
  const value = /^\d+$/.test(text) ? Number(text) : Number.NaN;
  if (!(value >= low && value <= high))
    throw new InputError('flag', {
      field: flag,
      rule: `must be a whole number, ${low} to ${high}`,
      got: quotedTyped(text),
      hint,
    });
  return value;
}

/**
 * One of a few words given to a flag.
 *
 * @throws {InputError} `flag` when it is another
 */
export function oneOf<const T extends string>(
  flag: string,
  text: string,
  words: readonly T[],
  hint: string,
): T {
  const found = words.find((word) => word === text);
  if (found === undefined)
    throw new InputError('flag', {
      field: flag,
      rule: words.length > 3 ? `must be one of ${words.join(', ')}` : `must be ${words.join(' or ')}`,
      got: quotedTyped(text),
      hint: `${didYouMean(text, words)}${hint}`,
    });
  return found;
}

/**
 * The layout given to `--layout`, in whichever notation.
 *
 * @throws {InputError} `missing-flag`, or `layout-text` when it cannot be read
 */
export function layoutFlag(text: string | undefined): WrittenLayout {
  if (text === undefined) throw missingFlag('--layout', `Give it in quotes. ${ALL_NOTATIONS}`);
  try {
    return readLayout(text);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(error.code, error.faults, '--layout', error.faults.length + error.more);
  }
}
