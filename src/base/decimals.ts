/** A number with this many decimals, and never `-0.0`. */
export const decimals = (value: number, digits: number): string => {
  const text = value.toFixed(digits);
  return Number(text) === 0 ? text.replace('-', '') : text;
};

/** A difference with its sign: `+0.3`, `-1.2`, and `0.0` without one. */
export const signed = (value: number, digits: number): string => {
  const text = decimals(value, digits);
  return Number(text) > 0 ? `+${text}` : text;
};

/** The number rounded to this many decimals, for tables that programs read. */
export const toDigits = (value: number, digits: number): number => Number(decimals(value, digits));
