import { decimals } from '../../../base/decimals.js';
import type { DisplayUnit } from '../../text/display-units.js';

/** Significant digits of a number that a person gave: beyond them there is only rounding. */
const GIVEN_DIGITS = 6;

/** A number with its unit behind it, as `figure` writes it. */
export const amount = (value: number, unit: DisplayUnit, digits?: number): string =>
  `${figure(value, unit, digits)} ${unit.name}`;

/**
 * A number in a unit, without the unit's name. Where that is the unit it was given in, it has this many decimals, or stands as
 * it was given; in another one it is written as the unit shows it.
 */
export function figure(value: number, unit: DisplayUnit, digits?: number): string {
  if (unit.per !== 1) return unit.show(value);
  return digits === undefined ? String(Number(value.toPrecision(GIVEN_DIGITS))) : decimals(value, digits);
}
