import { type ComparedId, REACTION_NUMBERS } from '../../../records/schemas/reaction-numbers.js';
import type { Units } from '../../text/display-units.js';

/** Said where all differences are shown as 0. */
export const NOTHING = 'no different';

/** Said of a change that leads away from what was asked for. */
export const FARTHER = 'farther from the wish';

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
    const unit = units[quantity];
    const shown = unit.size(size[id]);
    return Number(shown) === 0 ? [] : [`${shown} ${unit.name} ${size[id] > 0 ? more : less}`];
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
      const { size, name } = units[REACTION_NUMBERS[id].compared.quantity];
      return `±${size(scatter[id])} ${name}`;
    })
    .join(', ')
    .replace(/, ([^,]*)$/, ' and $1');
