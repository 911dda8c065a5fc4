import { isUnread, readNumber } from '../text/read-number.js';
import type { Wish } from './reaction-numbers.js';
import { isNoWish, MOST_WISHED, type NoWish, readWish } from './read-wish.js';
import { changeForms, changeWords, wishUnit } from './wish-forms.js';

/** What a drilled ball should do: as a wish asks for it, or more or less of what it does now, in the unit of answers. */
export type AskedChange =
  | { readonly is: 'step'; readonly step: number }
  | { readonly is: 'number'; readonly number: number }
  /** By how much; null for as much as a game shows. */
  | { readonly is: 'more' | 'less'; readonly by: number | null };

/** Reads what a ball should do instead: `later`, `3 ft later`, `41 ft`, `4`, `late`. */
export function readChange(wish: Wish, text: string): AskedChange | NoWish {
  const { more, less } = changeWords(wish);
  const trimmed = text.trim();
  const way = (['more', 'less'] as const).find((each) =>
    new RegExp(`(^|\\s)${{ more, less }[each]}$`, 'i').test(trimmed),
  );
  const rule = `must be ${changeForms(wish)}`;
  if (way === undefined) {
    const asked = readWish(wish, trimmed);
    if (isNoWish(asked)) return { ...asked, rule };
    return asked.step === null ? { is: 'number', number: asked.number } : { is: 'step', step: asked.step };
  }
  const amount = trimmed.slice(0, trimmed.length - { more, less }[way].length).trim();
  if (amount === '') return { is: way, by: null };
  const unit = wishUnit(wish);
  const read = readNumber(amount, { bare: unit, wanted: unit });
  if (isUnread(read) || read.halfRange !== null || !(read.value > 0 && read.value <= MOST_WISHED[wish]))
    return { rule, hint: `How much ${{ more, less }[way]}: up to ${MOST_WISHED[wish]} ${unit}.` };
  return { is: way, by: read.value };
}
