import { READINGS } from '../../records/log/readings.js';
import type { ReadingId } from '../../records/schemas/shot-log.js';
import type { Units } from './display-units.js';

/** A reading of a shot as a person has typed it: a board without its unit, anything else with it. */
export const readingText = (id: ReadingId, value: number, units: Units): string => {
  const { quantity } = READINGS[id];
  const shown = bareReading(id, value, units);
  return quantity === 'boards' ? shown : `${shown} ${units[quantity].name}`;
};

/** The same without its unit, for a table. */
export const bareReading = (id: ReadingId, value: number, units: Units): string => {
  const { quantity } = READINGS[id];
  return boardText(value * units[quantity].per, quantity === 'flare' ? FLARE_DIGITS : 1);
};

/** Flare is read to a quarter of an inch. */
const FLARE_DIGITS = 2;

/** A board as it is read, with a half where there is one: `17.5`. */
export const boardText = (board: number, digits = 1): string => String(Number(board.toFixed(digits)));
