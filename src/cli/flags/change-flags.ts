import type { AskedChanges } from '../../answer/adjust/wished-changes.js';
import { InputError, quotedTyped } from '../../base/errors.js';
import { fromKeys } from '../../base/from-keys.js';
import { NUMBER_OF_WISH, WISHES, type Wish, type WishedId } from '../../records/schemas/reaction-numbers.js';
import { readChange } from '../../records/schemas/read-change.js';
import { MOST_WISHED } from '../../records/schemas/read-wish.js';
import { wishUnit } from '../../records/schemas/wish-forms.js';
import { isUnread, readNumber } from '../../records/text/read-number.js';
import { collectFaults } from '../terminal/collect-faults.js';
import { didFlag, wishFlag } from './flag-table.js';
import { missingFlag } from './flags.js';
import type { AdjustOptions } from './options.js';

/**
 * What a drilled ball should do instead, from the flags of the wishes.
 *
 * @throws {InputErrors} every invalid wish; `missing-flag` where nothing is wished
 */
export function changeFlags(options: AdjustOptions): AskedChanges {
  const given = WISHES.filter((wish) => options[wish] !== undefined);
  if (given.length === 0)
    throw missingFlag(
      WISHES.map(wishFlag).join(' or '),
      'Say what the ball should do, such as --hook-start "3 ft later".',
    );
  return collectFaults(fromKeys(given, (wish) => () => changeFlag(wish, options[wish] as string)));
}

/** @throws {InputError} `flag` */
export function changeFlag(wish: Wish, text: string): NonNullable<AskedChanges[Wish]> {
  const asked = readChange(wish, text);
  if ('rule' in asked)
    throw new InputError('flag', { field: wishFlag(wish), got: quotedTyped(text), ...asked });
  return { text: text.trim(), asked };
}

/** The option of what the ball did of what a wish is about. */
export const didOption = (wish: Wish) =>
  `did${wish.charAt(0).toUpperCase()}${wish.slice(1)}` as `did${Capitalize<Wish>}`;

/**
 * What the ball did, from the flags that say so, in the units of answers.
 *
 * @throws {InputErrors} every one that is no number
 */
export function didFlags(options: AdjustOptions): Readonly<Partial<Record<WishedId, number>>> {
  const given = WISHES.filter((wish) => options[didOption(wish)] !== undefined);
  const read = collectFaults(
    fromKeys(given, (wish) => () => didNumber(wish, options[didOption(wish)] as string)),
  );
  return Object.fromEntries(given.map((wish) => [NUMBER_OF_WISH[wish], read[wish]]));
}

/** @throws {InputError} `flag` */
export function didNumber(wish: Wish, text: string): number {
  const unit = wishUnit(wish);
  const read = readNumber(text, { bare: unit, wanted: unit });
  const most = MOST_WISHED[wish];
  if (!isUnread(read) && read.halfRange === null && read.value >= 0 && read.value <= most) return read.value;
  throw new InputError('flag', {
    field: didFlag(wish),
    rule: `must be a number, 0 to ${most} ${unit}`,
    got: quotedTyped(text),
    hint: isUnread(read) && read.hint ? read.hint : `Such as "${Math.round(most / 2)} ${unit}".`,
  });
}
