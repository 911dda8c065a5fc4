import { isUnread, readNumber } from './read-number.js';

/**
 * A single number as typed, with its unit or without: `4 7/8`, `124 mm`, `6 mm down`, `28 km/h`; NaN otherwise.
 *
 * @param bare    unit of a number typed without one
 * @param wanted  unit of the result
 */
export function parseQuantity(text: string, bare: string, wanted: string): number {
  const read = readNumber(text, { bare, wanted });
  return isUnread(read) || read.halfRange !== null ? Number.NaN : read.value;
}
