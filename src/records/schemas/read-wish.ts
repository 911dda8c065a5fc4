import { nearestWord } from '../text/nearest-word.js';
import { numberHint } from '../text/number-hint.js';
import { isUnread, readNumber } from '../text/read-number.js';
import { type Wish, wishWords } from './reaction-numbers.js';
import { wishForms, wishUnit } from './wish-forms.js';

/** A wish as it was asked for: one of five steps, or a number in the unit that answers give it in. */
export type AskedWish =
  | { readonly step: number; readonly number: null }
  | { readonly step: null; readonly number: number };

/** Why a text is no wish, and what to do about it. */
export interface NoWish {
  readonly rule: string;
  readonly hint: string;
}

/** The greatest number that may be wished for, in the unit of answers: what the lane has room for. */
export const MOST_WISHED: Readonly<Record<Wish, number>> = { hookStart: 60, sharpness: 5, totalHook: 39 };

/** A number that is wished for, with its unit, as a record holds it: `41 ft`. */
export const formatWishedNumber = (wish: Wish, number: number): string =>
  `${Number(number.toPrecision(12))} ${wishUnit(wish)}`; // without the last digits of a conversion

/** Reads a wish: a step `4`, its word `late`, or a number with its unit, `41 ft`. */
export function readWish(wish: Wish, given: unknown): AskedWish | NoWish {
  const { steps } = wishWords(wish);
  const rule = `must be ${wishForms(wish)}`;
  const text = String(given).trim().toLowerCase();
  const step =
    typeof given === 'number' ? given : /^[1-5]$/.test(text) ? Number(text) : steps.indexOf(text) + 1;
  if (Number.isInteger(step) && step >= 1 && step <= 5) return { step, number: null };
  if (typeof given !== 'string') return { rule, hint: ends(steps) };
  const unit = wishUnit(wish);
  const read = readNumber(given, { bare: NO_UNIT, wanted: unit });
  if (!isUnread(read) && read.halfRange === null) {
    const most = MOST_WISHED[wish];
    return read.value >= 0 && read.value <= most
      ? { step: null, number: read.value }
      : { rule: `must be 0 to ${most} ${unit}`, hint: ends(steps) };
  }
  const near = nearestWord(text, steps);
  return { rule, hint: near ? `Did you mean ${near}?` : (hintOf(given, unit) ?? ends(steps)) };
}

export const isNoWish = (wish: AskedWish | NoWish): wish is NoWish => 'rule' in wish;

/** Stands for the unit of a number typed bare: a wish needs one. */
const NO_UNIT = '';

const ends = (steps: readonly string[]): string => `1 is ${steps[0]}, 5 is ${steps[4]}.`;

/** What to do about a text that is nearly a number. */
function hintOf(text: string, unit: string): string | null {
  const bare = readNumber(text, { bare: unit, wanted: unit });
  return !isUnread(bare) && bare.halfRange === null
    ? `A number needs its unit: ${text.trim()} ${unit}.`
    : numberHint(text, unit);
}
