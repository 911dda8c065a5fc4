import { fromKeys } from '../../base/from-keys.js';
import { WISHES, type Wish, wishWords } from '../../records/schemas/reaction-numbers.js';
import type { Want } from '../../records/schemas/want.js';
import { collectFaults } from '../terminal/collect-faults.js';
import { wishFlag } from './flag-table.js';
import { wholeNumber } from './flags.js';
import type { RecommendCommandOptions } from './options.js';

const STEPS = [1, 5] as const;

/**
 * The wanted reaction from its flags; one left out is ignored.
 *
 * @throws {InputErrors} every step that is none
 */
export function wantFlags(options: RecommendCommandOptions): Want {
  const read = collectFaults(fromKeys(WISHES, (wish) => () => step(wish, options[wish])));
  return Object.fromEntries(Object.entries(read).filter(([, value]) => value !== undefined));
}

function step(wish: Wish, text: string | undefined): number | undefined {
  const { steps } = wishWords(wish);
  const hint = `1 is ${steps[0]}, 5 is ${steps[4]}.`;
  return text === undefined ? undefined : wholeNumber(wishFlag(wish), text, STEPS, hint);
}
