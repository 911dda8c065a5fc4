import { LN2_HIGH, LN2_LOW } from './exp.js';

/** Remez polynomial of (ln(1 + s) − ln(1 − s) − 2s)/s in s², |s| ≤ 0.1716. */
const L1 = 0.6666666666666735;
const L2 = 0.3999999999940942;
const L3 = 0.2857142874366239;
const L4 = 0.22222198432149784;
const L5 = 0.1818357216161805;
const L6 = 0.15313837699209373;
const L7 = 0.14798198605116586;

/** Steps by which a number is brought near one, large ones first. */
const STEPS = [512, 512, 256, 128, 64, 32, 16, 8, 4, 2, 1].map((k) => ({ by: k, power: 2 ** k }));

/**
 * Natural logarithm, to within one unit in the last place; −∞ of zero, NaN below.
 *
 * x = 2ᵏ(1 + f) with 1 + f near one, and ln(1 + f) from a polynomial in f/(2 + f): sums, products and quotients, so the result is the
 * same to the last bit on every machine and in every version of the language's engine, which `Math.log` does not promise.
 * Source: method and coefficients of fdlibm's e_log.c (Sun Microsystems, 1993). Written from scratch.
 */
export function ln(x: number): number {
  if (!(x > 0)) return x === 0 ? Number.NEGATIVE_INFINITY : Number.NaN;
  if (x === Number.POSITIVE_INFINITY) return x;
  let m = x;
  let k = 0;
  for (const { by, power } of STEPS) {
    if (m >= power) {
      m /= power;
      k += by;
    } else if (m * power <= 1) {
      m *= power;
      k -= by;
    }
  }
  // m lies between ½ and 2 by now; the polynomial needs it between √½ and √2
  if (m > Math.SQRT2) {
    m /= 2;
    k += 1;
  } else if (m < Math.SQRT1_2) {
    m *= 2;
    k -= 1;
  }
  const f = m - 1;
  const half = 0.5 * f * f;
  const s = f / (2 + f);
  const z = s * s;
  const w = z * z;
  const r = z * (L1 + w * (L3 + w * (L5 + w * L7))) + w * (L2 + w * (L4 + w * L6));
  return k * LN2_HIGH - (half - (s * (half + r) + k * LN2_LOW) - f);
}
