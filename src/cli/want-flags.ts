import { InputError } from '../errors.js';
import type { Want } from '../records/want.js';
import { wholeNumber } from './flags.js';
import { gather } from './gather.js';
import type { RecommendOptions } from './options.js';

const STEPS = [1, 5] as const;

/**
 * The wanted reaction from its three flags; each may be left out, but not all where a wish is needed.
 *
 * @throws {InputError} `missing-flag`  @throws {InputErrors} a step that is none
 */
export function wantFlags({ hookStart, hookShape, hookTotal }: RecommendOptions, isNeeded = true): Want {
  if (isNeeded && hookStart === undefined && hookShape === undefined && hookTotal === undefined)
    throw new InputError('missing-flag', {
      field: '--hook-start, --hook-shape, --hook-total',
      rule: 'are all missing, at least one is needed',
      got: 'nothing',
      hint: 'Give a step from 1 to 5: start 1 earliest to 5 latest, shape 1 smoothest to 5 sharpest, total 1 least to 5 most.',
    });
  const read = gather({
    hookStart: () => step('--hook-start', hookStart, '1 is earliest, 5 is latest.'),
    hookShape: () => step('--hook-shape', hookShape, '1 is smoothest, 5 is sharpest.'),
    hookTotal: () => step('--hook-total', hookTotal, '1 is least, 5 is most.'),
  });
  return Object.fromEntries(Object.entries(read).filter(([, value]) => value !== undefined)) as Want;
}

const step = (flag: string, text: string | undefined, hint: string): number | undefined =>
  text === undefined ? undefined : wholeNumber(flag, text, STEPS, hint);
