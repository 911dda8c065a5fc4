import type { Want } from '../../records/schemas/want.js';
import { gather } from '../terminal/gather.js';
import { wholeNumber } from './flags.js';
import type { RecommendOptions } from './options.js';

const STEPS = [1, 5] as const;

/**
 * The wanted reaction from its three flags; one left out is no wish.
 *
 * @throws {InputErrors} every step that is none
 */
export function wantFlags({ hookStart, sharpness, totalHook }: RecommendOptions): Want {
  const read = gather({
    hookStart: () => step('--hook-start', hookStart, '1 is earliest, 5 is latest.'),
    sharpness: () => step('--sharpness', sharpness, '1 is smoothest, 5 is sharpest.'),
    totalHook: () => step('--total-hook', totalHook, '1 is least, 5 is most.'),
  });
  return Object.fromEntries(Object.entries(read).filter(([, value]) => value !== undefined)) as Want;
}

const step = (flag: string, text: string | undefined, hint: string): number | undefined =>
  text === undefined ? undefined : wholeNumber(flag, text, STEPS, hint);
