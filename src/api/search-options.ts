import { z } from 'zod';
import { GREATEST_SEED, MOST_TOP, MOST_WORKERS, USUAL_SEED, USUAL_TOP } from '../base/search-limits.js';
import { parseRecord } from '../records/read/read-record.js';
import { USUAL_PRACTICE_WEIGHT } from '../records/shared/beliefs.js';
import type { SettingOptions } from '../simulate/setting.js';

/** How far a search has come: a stage, and how many of its steps are done. */
export interface Progress {
  readonly stage: string;
  readonly done: number;
  readonly total: number;
}

/** How to search; all may be left out. */
export interface SearchOptions {
  /** Seed of the random worlds, 0 to 2³¹ − 1, 1 when left out. The same seed gives the same answer, byte for byte. */
  readonly seed?: number | undefined;
  /** Threads to search with, 1 to 64; 1, this one alone, when left out. The answer does not depend on it. */
  readonly workers?: number | undefined;
  /** Chance in a hundred, 0 to 100, that a belief of practice holds beside physics; 50 when left out, 0 for physics alone. */
  readonly practice?: number | undefined;
  /** Where the pin may lie, seen from the midline; above when left out. */
  readonly pinSide?: 'above' | 'below' | 'both' | undefined;
  /** Id of the rule set that decides what is legal: `federation-2020` when left out. */
  readonly rules?: string | undefined;
  /** Ends the search at its next step, which may be a second or two away; it then rejects with the signal's reason. */
  readonly signal?: AbortSignal | undefined;
  /** Called at each step of the search. */
  readonly onProgress?: ((progress: Progress) => void) | undefined;
}

const wholeNumber = (least: number, most: number) => {
  const rule = `must be a whole number, ${least} to ${most}`;
  return z.int({ error: rule }).min(least, rule).max(most, rule);
};

/** Those of the options that are data, with what stands for each that is left out. */
const optionsSchema = z.strictObject({
  top: wholeNumber(1, MOST_TOP).default(USUAL_TOP),
  seed: wholeNumber(0, GREATEST_SEED).default(USUAL_SEED),
  workers: wholeNumber(1, MOST_WORKERS).default(1),
  practice: wholeNumber(0, 100)
    .default(100 * USUAL_PRACTICE_WEIGHT)
    .transform((percent) => percent / 100),
  pinSide: z
    .enum(['above', 'below', 'both'], { error: 'must be "above", "below" or "both"' })
    .default('above'),
  rules: z.string({ error: 'must be the id of a rule set' }).optional(),
});

/**
 * The options as the engine takes them.
 *
 * @throws {InputError} `bad-record` with all faults at once
 */
export function settingOptions({
  signal,
  onProgress,
  ...given
}: SearchOptions & { readonly top?: number | undefined }): SettingOptions & { readonly top: number } {
  const { rules, practice, ...options } = parseRecord(optionsSchema, given, 'options');
  return {
    ...options,
    ruleSet: rules,
    practiceWeight: practice,
    onProgress: (progress) => {
      signal?.throwIfAborted();
      onProgress?.(progress);
    },
  };
}
