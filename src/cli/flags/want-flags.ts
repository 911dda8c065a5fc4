import { InputError, quotedTyped } from '../../base/errors.js';
import { fromKeys } from '../../base/from-keys.js';
import { withoutUndefined } from '../../base/without-undefined.js';
import { WISHES, type Wish } from '../../records/schemas/reaction-numbers.js';
import { formatWishedNumber, isNoWish, readWish } from '../../records/schemas/read-wish.js';
import type { Want } from '../../records/schemas/want.js';
import { collectFaults } from '../terminal/collect-faults.js';
import { wishFlag } from './flag-table.js';
import type { WishOptions } from './options.js';

/**
 * The wanted reaction from its flags; one left out is ignored.
 *
 * @throws {InputErrors} every invalid wish
 */
export function wantFlags(options: WishOptions): Want {
  return withoutUndefined(collectFaults(fromKeys(WISHES, (wish) => () => wished(wish, options[wish]))));
}

/** A wish as typed: a step or its word as the step, a number with the unit that answers have. */
function wished(wish: Wish, text: string | undefined): number | string | undefined {
  if (text === undefined) return undefined;
  const asked = readWish(wish, text);
  if (isNoWish(asked))
    throw new InputError('flag', { field: wishFlag(wish), got: quotedTyped(text), ...asked });
  return asked.step ?? formatWishedNumber(wish, asked.number);
}
