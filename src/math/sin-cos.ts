/** π/2 in three parts (the first two times a whole number below 2²⁰ are exact), and 2/π. */
const QUARTER_1 = 1.5707963267341256;
const QUARTER_2 = 6.077100506303966e-11;
const QUARTER_3 = 2.0222662487959506e-21;
const PER_QUARTER = 0.6366197723675814;

/** Beyond this angle, rad, the reduction loses digits. */
const FAR = 1e6;

/** Remez polynomials of sine and cosine over ±π/4. */
const S1 = -0.16666666666666632;
const S2 = 0.00833333333332249;
const S3 = -0.0001984126982985795;
const S4 = 0.0000027557313707070068;
const S5 = -2.5050760253406863e-8;
const S6 = 1.58969099521155e-10;
const C1 = 0.0416666666666666;
const C2 = -0.001388888888887411;
const C3 = 0.00002480158728947673;
const C4 = -2.7557314351390663e-7;
const C5 = 2.087572321298175e-9;
const C6 = -1.1359647557788195e-11;

/*
 * Sine and cosine to within one unit in the last place, made of sums and products alone. They are the same to the last bit on every
 * machine and in every version of the language's engine, which `Math.sin` and `Math.cos` do not promise (those serve beyond a million
 * radians, where nothing in flarewise goes). Angles are reduced to ±π/4; a second number carries what the reduction rounds off.
 * Source: polynomials and three-part π/2 of fdlibm's k_sin.c, k_cos.c and e_rem_pio2.c (Sun Microsystems, 1993); reduction after
 * Cody & Waite, Software Manual for the Elementary Functions, 1980. Written from scratch.
 */

/** Sine of an angle, rad. */
export function sin(angle: number): number {
  if (!(Math.abs(angle) <= FAR)) return Math.sin(angle);
  return sinOfQuarters(angle, 0);
}

/** Cosine of an angle, rad. */
export function cos(angle: number): number {
  if (!(Math.abs(angle) <= FAR)) return Math.cos(angle);
  return sinOfQuarters(angle, 1);
}

/** Tangent of an angle, rad, to two units in the last place. */
export const tan = (angle: number): number => sin(angle) / cos(angle);

/** Sine of an angle and some quarter turns more. */
function sinOfQuarters(angle: number, more: number): number {
  const quarters = Math.floor(angle * PER_QUARTER + 0.5);
  const first = angle - quarters * QUARTER_1;
  const second = quarters * QUARTER_2;
  const coarse = first - second;
  const third = quarters * QUARTER_3 - (first - coarse - second);
  const x = coarse - third;
  const tail = coarse - x - third;
  const at = (quarters + more) & 3;
  const size = at & 1 ? cosNear(x, tail) : sinNear(x, tail);
  return at & 2 ? -size : size;
}

/** Sine of x + tail, |x| ≤ π/4, the tail far below x's last digit. */
export function sinNear(x: number, tail = 0): number {
  const z = x * x;
  const v = z * x;
  const r = S2 + z * (S3 + z * (S4 + z * (S5 + z * S6)));
  return x - (z * (0.5 * tail - v * r) - tail - v * S1);
}

/** Cosine of x + tail, |x| ≤ π/4. */
export function cosNear(x: number, tail = 0): number {
  const z = x * x;
  const r = z * (C1 + z * (C2 + z * (C3 + z * (C4 + z * (C5 + z * C6)))));
  const half = 0.5 * z;
  const w = 1 - half;
  return w + (1 - w - half + (z * r - x * tail));
}
