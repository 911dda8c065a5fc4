/**
 * A number with this many decimals, and never `-0.0`.
 *
 * A half is rounded away from zero by the decimals that a reader sees: 1.005 is 1.01, though the nearest double lies a little below.
 */
export const decimals = (value: number, digits: number): string => {
  const text = roundedHalfUp(value, digits).toFixed(digits);
  return Number(text) === 0 ? text.replace('-', '') : text;
};

/** A difference with its sign: `+0.3`, `-1.2`, and `0.0` without one. */
export const signed = (value: number, digits: number): string => {
  const text = decimals(value, digits);
  return Number(text) > 0 ? `+${text}` : text;
};

/** The number rounded to this many decimals, for tables that programs read. */
export const toDigits = (value: number, digits: number): number => Number(decimals(value, digits));

/** Digits of a double that are the same in any number typed with so many. */
const SURE_DIGITS = 15;

function roundedHalfUp(value: number, digits: number): number {
  const size = Math.abs(value);
  if (!(size < Number(`1e${SURE_DIGITS - digits}`))) return value; // it has no such decimals, or is no number
  const [mantissa, exponent = '0'] = size.toPrecision(SURE_DIGITS).split('e');
  const count = Math.round(Number(`${mantissa}e${Number(exponent) + digits}`));
  return Math.sign(value) * Number(`${count}e${-digits}`);
}
