/**
 * A contact that is a small disc instead of a point, evenly pressed: it resists pivoting and, by a lever, rolling.
 *
 * Off by default, since it is small: a ball of 15 lb on a lane touches over some 1.4 mm (Hertz, for two solids of
 * 2 GPa: an estimate). At a friction of 0.2 that takes about half a radian per second of the spin about the vertical in
 * each second of rolling; while the ball slides fast it does next to nothing.
 */
export interface ContactPatch {
  /** m */
  readonly radius: number;
  /** How far ahead of the contact's middle the normal force acts in rolling, m; 0 when left out. */
  readonly rollingLever?: number;
}

/** Pivoting slower than this (rad/s) is braked in proportion: what is at rest is not pushed to and fro. */
const AT_REST = 0.1;

/** Speed of the disc's rim from pivoting, m/s; a little above nothing even at rest. */
export const rimSpeed = (radius: number, wZ: number): number =>
  radius * Math.sqrt(wZ * wZ + AT_REST * AT_REST);

/**
 * Friction that a pivoting disc puts up against its slip, as a share of that of a point: s/(s⁴ + rim⁴)^¼.
 *
 * A disc that both slips and pivots has less of either friction than it would alone (Contensou; a formula in place
 * of the integral over the disc as Zhuravlev does it: both from memory, the formula is our own). Has the integral's
 * limits of an evenly pressed disc, s/(a ω) for slow slip and 1 for fast; between, it errs by at most 0.02.
 */
export const slipShare = (slip: number, rim: number): number => slip / together(slip, rim);

/**
 * Moment against pivoting per normal force and friction, m: −(2/3) a · a ω/(rim⁴ + (8 s/3)⁴)^¼.
 *
 * Limits as above: (2/3) a without slip, ω a²/(4 s) for fast slip. Between, it is too small by at most 0.1 a.
 */
export const pivotLever = (slip: number, rim: number, radius: number, wZ: number): number =>
  rim > 0 ? (-2 * radius * radius * wZ) / (3 * together(rim, (8 / 3) * slip)) : 0;

/** What two speeds make together: about the greater. */
const together = (a: number, b: number): number => Math.sqrt(Math.sqrt(a ** 4 + b ** 4));

/** Moment against rolling per normal force, across the lane and down it, m in W: none while the ball only pivots. */
export function rollingMoment(
  { rollingLever = 0 }: ContactPatch,
  wX: number,
  wY: number,
): readonly [number, number] {
  const size = Math.sqrt(wX * wX + wY * wY);
  const k = size > 0 ? -rollingLever / size : 0;
  return [k * wX, k * wY];
}
