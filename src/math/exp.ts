/** ln 2 in two parts (the first times any exponent is exact), and 1/ln 2. */
export const LN2_HIGH = 0.6931471803691238;
export const LN2_LOW = 1.9082149292705877e-10;
const PER_LN2 = Math.LOG2E;

/** Remez polynomial for r (eʳ + 1)/(eʳ − 1) − 2 in r², |r| ≤ ln 2/2. */
const P1 = 0.16666666666666602;
const P2 = -0.0027777777777015593;
const P3 = 0.00006613756321437934;
const P4 = -0.0000016533902205465252;
const P5 = 4.1381367970572385e-8;

/** 2⁻⁵⁴⁰ to 2⁵¹². A factor 2ᵏ is applied as two halves, since 2ᵏ itself may lie outside the range of doubles. */
const LEAST_POWER = -540;
const POWERS_OF_TWO = Float64Array.from({ length: 512 - LEAST_POWER + 1 }, (_, i) => 2 ** (i + LEAST_POWER));

/** Above the first, eˣ exceeds the greatest double; below the second, half the least one. */
const OVERFLOWS = 709.79;
const UNDERFLOWS = -745.2;

/**
 * eˣ, to within one unit in the last place.
 *
 * Only sums, products and one quotient, so the result is the same to the last bit on every machine and in every version of the
 * language's engine, which `Math.exp` does not promise. x = k ln 2 + r, and eʳ = 1 + r + r c/(2 − c) with c from a polynomial.
 * Source: method and coefficients of fdlibm's e_exp.c (Sun Microsystems, 1993); reduction after Cody & Waite, Software Manual
 * for the Elementary Functions, 1980. Written from scratch.
 */
export function exp(x: number): number {
  if (!(x > UNDERFLOWS)) return x <= UNDERFLOWS ? 0 : x; // NaN stays
  if (x > OVERFLOWS) return Number.POSITIVE_INFINITY;
  const k = Math.floor(x * PER_LN2 + 0.5);
  const high = x - k * LN2_HIGH;
  const low = k * LN2_LOW;
  const r = high - low;
  const r2 = r * r;
  const c = r - r2 * (P1 + r2 * (P2 + r2 * (P3 + r2 * (P4 + r2 * P5))));
  const power = 1 - (low - (r * c) / (2 - c) - high);
  const half = k >> 1;
  return power * POWERS_OF_TWO[half - LEAST_POWER] * POWERS_OF_TWO[k - half - LEAST_POWER];
}

/** Hyperbolic tangent, to an absolute error of 4.4e-16. Near zero, where the result is small too, its relative error is greater. */
export function tanh(x: number): number {
  const shrunk = exp(-2 * Math.abs(x));
  const size = (1 - shrunk) / (1 + shrunk);
  return x < 0 ? -size : size;
}
