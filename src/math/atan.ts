/** arctan of ½, 1, 3/2 and infinity: each as a double, and what rounding to that double left off. */
const NODES: readonly (readonly [angle: number, rest: number])[] = [
  [0.4636476090008061, 2.2698777452961687e-17],
  [0.7853981633974483, 3.061616997868383e-17],
  [0.982793723247329, 1.3903311031230998e-17],
  [1.5707963267948966, 6.123233995736766e-17],
];

/** Remez polynomial of (x − arctan x)/x³ in x², |x| ≤ 7/16. */
const A1 = 0.3333333333333293;
const A2 = -0.19999999999876483;
const A3 = 0.14285714272503466;
const A4 = -0.11111110405462356;
const A5 = 0.09090887133436507;
const A6 = -0.0769187620504483;
const A7 = 0.06661073137387531;
const A8 = -0.058335701337905735;
const A9 = 0.049768779946159324;
const A10 = -0.036531572744216916;
const A11 = 0.016285820115365782;

const HALF_TURN_REST = 1.2246467991473532e-16;

/*
 * Inverse trigonometric functions, made of sums, products, quotients and square roots alone. They are the same to the last bit on every
 * machine and in every version of the language's engine, which `Math.atan2` and the like do not promise.
 * Source: nodes and polynomial of fdlibm's s_atan.c, quadrants of its e_atan2.c (Sun Microsystems, 1993). Written from scratch.
 */

/**
 * Angle of the point (x, y) from the x axis, rad in [−π, π], to two units in the last place. Signs of zeros count as in `Math.atan2`.
 * NaN where both are infinite.
 */
export function atan2(y: number, x: number): number {
  if (x === 0 && y === 0) return 1 / x > 0 ? y : y + signOf(y) * Math.PI;
  const slope = atanOf(Math.abs(y / x));
  return signOf(y) * (x < 0 ? Math.PI - (slope - HALF_TURN_REST) : slope);
}

/** Angle whose sine is given, rad in [−π/2, π/2], to three units in the last place; NaN beyond ±1. */
export const asin = (sine: number): number => atan2(sine, Math.sqrt((1 - sine) * (1 + sine)));

/** Angle whose cosine is given, rad in [0, π], to three units in the last place; NaN beyond ±1. */
export const acos = (cosine: number): number => atan2(Math.sqrt((1 - cosine) * (1 + cosine)), cosine);

/** Angle whose tangent is given, 0 or more, rad. */
function atanOf(slope: number): number {
  if (slope < 7 / 16) return slope - slope * bend(slope);
  if (slope < 11 / 16) return beyond(NODES[0], (2 * slope - 1) / (2 + slope));
  if (slope < 19 / 16) return beyond(NODES[1], (slope - 1) / (slope + 1));
  if (slope < 39 / 16) return beyond(NODES[2], (slope - 1.5) / (1 + 1.5 * slope));
  return beyond(NODES[3], -1 / slope);
}

/** A node's angle plus arctan x, |x| ≤ 7/16. */
const beyond = ([angle, rest]: readonly [number, number], x: number): number =>
  angle - (x * bend(x) - rest - x);

/** 1 − arctan(x)/x. */
function bend(x: number): number {
  const z = x * x;
  const w = z * z;
  const odd = A1 + w * (A3 + w * (A5 + w * (A7 + w * (A9 + w * A11))));
  const even = A2 + w * (A4 + w * (A6 + w * (A8 + w * A10)));
  return z * odd + w * even;
}

const signOf = (y: number): number => (y < 0 || (y === 0 && 1 / y < 0) ? -1 : 1);
