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

/** Puts the sentences in, in the trade's units, as `--json` prints them. */
export const worded = <T>(answer: T): Worded<T> => withSentences(answer) as Worded<T>;

/** What cannot be computed with, in words; any other error as it is. */
export const inWords = (error: unknown): unknown =>
  error instanceof Refusal ? formatRefusal(error, UNITS.trade) : error;
