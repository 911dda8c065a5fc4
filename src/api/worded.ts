import { Refusal } from '../records/refusals/refusal.js';
import { UNITS } from '../report/text/display-units.js';
import { formatRefusal } from '../report/wording/refusals/word-refusal.js';
import { withSentences } from '../report/wording/with-sentences.js';

/** An answer in which each statement, a code and its params, also has its English sentence. */
export type Worded<T> = T extends { readonly code: string; readonly params: object }
  ? T & { readonly text: string }
  : T extends readonly (infer Item)[]
    ? readonly Worded<Item>[]
    : T extends object
      ? { readonly [Key in keyof T]: Worded<T[Key]> }
      : T;

/**
 * What a library function answers, with its sentences in the trade's units, as `--json` prints them.
 *
 * @throws {InputError} for what cannot be computed with
 */
export function worded<T>(answer: () => T): Worded<T> {
  try {
    return withSentences(answer()) as Worded<T>;
  } catch (error) {
    throw inWords(error);
  }
}

/** The same of a function that takes its time. */
export async function wordedLater<T>(answer: () => Promise<T>): Promise<Worded<T>> {
  try {
    return withSentences(await answer()) as Worded<T>;
  } catch (error) {
    throw inWords(error);
  }
}

const inWords = (error: unknown): unknown =>
  error instanceof Refusal ? formatRefusal(error, UNITS.trade) : error;
