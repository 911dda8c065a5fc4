import { deviationOf } from '../records/read/typed-numbers.js';
import { ABOUT_DEVIATION, type UncertainKey } from '../records/shared/about-deviation.js';
import { numberHint } from '../records/text/number-hint.js';
import { isUnread, readNumber } from '../records/text/read-number.js';
import type { NumberQuestion } from './questions/question.js';

/** A number as it was given to a question, in the record's unit. */
interface NumberGiven {
  /** Undefined otherwise. */
  readonly value?: number;
  /** How far off it may be (one standard deviation), where that was said and the record has a place for it. */
  readonly deviation?: number;
  /** What to do where it is not a single number. */
  readonly hint?: string;
}

/** Reads what was given to a number's question; a range only where the record says how sure the number is. */
export function numberGiven({ id, typed }: NumberQuestion, given: unknown): NumberGiven {
  if (typeof given === 'number' || !typed) return typeof given === 'number' ? { value: given } : {};
  const text = String(given);
  const read = readNumber(text, typed.kind);
  if (isUnread(read) || (read.halfRange !== null && !isUncertain(id))) {
    const hint = isUnread(read) ? read.hint : numberHint(text, typed.kind.wanted);
    return hint === null ? {} : { hint };
  }
  const deviation = isUncertain(id) ? deviationOf(read, id) : null;
  return { value: read.value, ...(deviation === null ? {} : { deviation }) };
}

const isUncertain = (id: string): id is UncertainKey => Object.hasOwn(ABOUT_DEVIATION, id);

/** What a number was taken for, where it was typed as a range, as about so much, or in a way that others read otherwise. */
export function formatTaken(question: NumberQuestion, given: unknown): string | null {
  if (
    typeof given !== 'string' ||
    !question.typed ||
    !/\d ?(-|,|to )|~|≈|±|\+\/-|^ *(about|a|c|r)/i.test(given)
  )
    return null;
  const { value, deviation } = numberGiven(question, given);
  const { show } = question.typed;
  if (value === undefined) return null;
  return `Taken as ${show(value)}${deviation === undefined ? '' : `, give or take ${show(deviation)}`}.`;
}
