import { type ComparedId, REACTION_NUMBERS } from '../../../records/schemas/reaction-numbers.js';
import type { Units } from '../../text/display-units.js';

/** Said where all differences are shown as 0. */
export const NOTHING = 'no different';

/**
 * Differences in words, `0.4 ft later, 1.2 boards more`: those of the numbers asked for that are not shown as 0.
 *
 * @param size  a layout's less another's, in the units of answers
 */
export function sizeText<K extends ComparedId>(
  size: Readonly<Record<K, number>>,
  ids: readonly K[],
  units: Units,
): string {
  const parts = ids.flatMap((id) => {
    const { quantity, more, less } = REACTION_NUMBERS[id].compared;
    const { change, name } = units[quantity];
    const shown = change(Math.abs(size[id])).replace('+', '');
    return Number(shown) === 0 ? [] : [`${shown} ${name} ${size[id] > 0 ? more : less}`];
  });
  return parts.length > 0 ? parts.join(', ') : NOTHING;
}

/** How far a bowler's shots vary, `±1.2 ft and ±0.031 deg/ft`. */
export const scatterText = <K extends ComparedId>(
  scatter: Readonly<Record<K, number>>,
  ids: readonly K[],
  units: Units,
): string =>
  ids
    .map((id) => {
      const { change, name } = units[REACTION_NUMBERS[id].compared.quantity];
      return `${change(scatter[id]).replace('+', '±')} ${name}`;
    })
    .join(', ')
    .replace(/, ([^,]*)$/, ' and $1');
