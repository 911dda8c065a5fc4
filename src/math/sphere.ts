import { asin, atan2 } from './atan.js';
import { cos, sin } from './sin-cos.js';
import { add, addScaled, cross, dot, norm, scale, unit, type Vec3 } from './vec3.js';

/*
 * Great-circle geometry on the unit sphere. Points are unit vectors from Bo; arcs are angles at Bo in
 * radians (times the ball's radius for a tape's reading). Relations: Todhunter & Leathem, Spherical
 * Trigonometry, art. 62 (right triangles).
 */

/**
 * Angle at the ball's centre between two surface points, in radians, in [0, π].
 *
 * Uses atan2(|u×v|, u·v): acos(u·v) returns 0 for points under about 1e-8 rad apart.
 */
export const arcAngle = (u: Vec3, v: Vec3): number => atan2(norm(cross(u, v)), dot(u, v));

/** The point reached from `u` by an arc in the direction of the unit tangent `along`. */
export const walk = (u: Vec3, along: Vec3, arc: number): Vec3 =>
  add(scale(cos(arc), u), scale(sin(arc), along));

/** Unit tangent at `u` that points along the great circle to `v`; NaN when they coincide or are opposite. */
export const tangentToward = (u: Vec3, v: Vec3): Vec3 => {
  if (norm(cross(u, v)) === 0) return [Number.NaN, Number.NaN, Number.NaN]; // only rounding is left, and its direction means nothing
  return unit(addScaled(v, -dot(u, v), u));
};

/**
 * Turn at `u` from the direction of `from` to that of `to`, rad in (−π, π], clockwise as seen from
 * outside the ball.
 */
export function clockwiseTurn(u: Vec3, from: Vec3, to: Vec3): number {
  const a = tangentToward(u, from);
  const b = tangentToward(u, to);
  return atan2(-dot(u, cross(a, b)), dot(a, b));
}

/**
 * Leg of a right-angled spherical triangle from its hypotenuse and other leg: cos h = cos a · cos b.
 *
 * @returns the leg in [0, π/2], rad, or null when no such triangle exists (the leg is longer than the hypotenuse)
 */
export function otherLeg(hypotenuse: number, leg: number): number | null {
  // (1 − cos b) by half-angle sines: exact for small triangles, where the ratio of cosines is not.
  const half = sin((hypotenuse + leg) / 2) * sin((hypotenuse - leg) / 2);
  const oneMinusCosine = (2 * half) / cos(leg);
  const halfSine = Math.sqrt(oneMinusCosine / 2);
  return halfSine >= 0 && halfSine <= Math.SQRT1_2 ? 2 * asin(halfSine) : null;
}
