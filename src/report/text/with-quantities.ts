import { parseFraction } from '../../records/text/parse-fraction.js';
import { given, type Quantity, UNITS, type Units } from './display-units.js';

/** Digits of a converted range: an end of it must not be said to lie beyond itself. */
const RANGE_DIGITS = 4;

/** `{4 7/8 tape}` or `{8 to 26 speed}`: numbers in the trade's unit of a quantity. */
const MARKED = /\{(-?[\d./ ]+?)(?: to (-?[\d./ ]+?))? ([a-zA-Z]+)\}/g;

/**
 * A text of this program's own with its quantities in some units. Each stands in braces, a number or a range in the trade's
 * unit and the quantity's name: `{8 to 26 speed}` is 8 to 26 mph. What a person named or typed does not belong in such a text.
 */
export const withQuantities = (text: string, units: Units): string =>
  text.replace(MARKED, (_, least: string, most: string | undefined, quantity: Quantity) => {
    const { name, per } = units[quantity];
    const inUnit = (number: string): string => {
      if (per === UNITS.trade[quantity].per) return number;
      const value = number.startsWith('-') ? -parseFraction(number.slice(1)) : parseFraction(number);
      return given(value, { per }, most === undefined ? undefined : RANGE_DIGITS);
    };
    return `${most === undefined ? '' : `${inUnit(least)} to `}${inUnit(most ?? least)} ${name}`;
  });
