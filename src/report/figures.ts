import type { Band, DrilledAnswer } from '../records/answer.js';
import { wordFraction, wordSixteenths } from '../records/layout-text.js';
import { glyphs, type Page } from './page.js';

/*
 * How many digits each quantity is shown with. Made balls differ from their published numbers by a few per
 * cent and no lane is known to a tenth of a foot, so more digits would be false.
 */

/** A number with so many decimals, and never `-0.0`. */
export const decimals = (value: number, digits: number): string => {
  const text = value.toFixed(digits);
  return Number(text) === 0 ? text.replace('-', '') : text;
};

/** A difference with its sign: `+0.3`, `-1.2`, and `0.0` without one. */
export const signed = (value: number, digits: number): string => {
  const text = decimals(value, digits);
  return Number(text) > 0 ? `+${text}` : text;
};

export const feet = (value: number): string => decimals(value, 1);
export const boards = (value: number): string => decimals(value, 1);
export const degrees = (value: number): string => decimals(value, 1);
export const sharpness = (value: number): string => decimals(value, 2);
export const gyration = (value: number): string => decimals(value, 3);
export const ounces = (value: number): string => decimals(value, 1);
export const flare = (value: number): string => decimals(value, 1);
export const points = (value: number): string => decimals(value, 0);
export const percent = (share: number): string => decimals(100 * share, 0);

/** Inches as read off a tape, to a sixteenth: `4 1/2`. */
export const tape = (inches: number): string => wordSixteenths(inches);

/** A drill's size: a fraction where it is one of 64ths, as drills are, else as given. */
export const drillSize = (inches: number): string =>
  Math.abs(inches * 64 - Math.round(inches * 64)) < 0.064 ? wordFraction(inches, 64) : decimals(inches, 3);

/** Inches to an eighth, for what nobody can know better. */
export const eighths = (inches: number): string => wordSixteenths(Math.round(inches * 8) / 8);

export const band = ({ low, high }: Band, show: (value: number) => string, page: Page): string =>
  low === high ? show(low) : `${show(low)} ${glyphs(page).dash} ${show(high)}`;

/** Whether one core alone stands behind drilled numbers: the ball's own, of which nothing is left open. */
export const isOneCore = (bands: DrilledAnswer['bands']): boolean =>
  Object.values(bands).every(({ low, high }) => low === high);

/** An angle in words: `70°`, or `70 deg` where only ASCII may be used. */
export const angle = (degreesValue: number, page: Page, digits = 0): string =>
  `${decimals(degreesValue, digits)}${glyphs(page).degree}`;
