import { GREATEST_SEED, MOST_TOP, USUAL_SEED, USUAL_TOP } from '../../base/search-limits.js';
import { USUAL_PRACTICE_WEIGHT } from '../../records/shared/beliefs.js';
import type { Terminal } from '../terminal/terminal.js';
import { WANTED_PIN_SIDES } from './flag-table.js';
import { oneOf, wholeNumber } from './flags.js';
import { globalFlags } from './global-flags.js';
import type { RecommendCommandOptions } from './options.js';
import { rulesFlag } from './rules-flag.js';

/** Readers of the flags that say how to search. */
export const searchFlags = (options: Omit<RecommendCommandOptions, 'ball'>, terminal: Terminal) => ({
  top: () =>
    options.top === undefined
      ? USUAL_TOP
      : wholeNumber('--top', options.top, [1, MOST_TOP], 'How many layouts to list.'),
  seed: () =>
    options.seed === undefined
      ? USUAL_SEED
      : wholeNumber('--seed', options.seed, [0, GREATEST_SEED], 'The same seed gives the same answer.'),
  practiceWeight: () =>
    options.practice === undefined
      ? USUAL_PRACTICE_WEIGHT
      : wholeNumber(
          '--practice',
          options.practice,
          [0, 100],
          '0 is physics alone, 100 counts every belief.',
        ) / 100,
  pinSide: () =>
    oneOf(
      '--pin-side',
      options.pinSide ?? 'above',
      WANTED_PIN_SIDES,
      'Where the pin may lie, seen from the midline.',
    ),
  ruleSet: () => rulesFlag(options.rules),
  budget: () => terminal.budget,
  ...globalFlags(options, terminal),
});

/** What the flags say about how to search. */
export type Search = {
  [K in keyof ReturnType<typeof searchFlags>]: ReturnType<ReturnType<typeof searchFlags>[K]>;
};
