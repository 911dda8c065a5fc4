import type { Mat3 } from '../../math/mat3.js';
import type { Vec3 } from '../../math/vec3.js';
import type { UnitShape } from './part.js';

/** Stretch [enter, leave] of a ray's parameter inside a convex solid; empty when enter ≥ leave. */
export interface Interval {
  enter: number;
  leave: number;
}

/**
 * A ray q(t) = o + t d in a shape's unit frame: the three numbers of o, then those of d. Where many rays are crossed one is lent for all:
 * numbers that are handed to a function one by one become garbage when it is not inlined, and were a quarter of an answer's.
 */
export const unitRay = (): Float64Array => new Float64Array(6);

/**
 * Writes into `out` where the ray a + t d lies inside a unit shape under an affine map.
 *
 * @param lent         written over
 * @param map, offset  back to the shape's unit frame: q = map p + offset
 */
export function crossMapped(
  out: Interval,
  lent: Float64Array,
  shape: UnitShape,
  [x, y, z]: Mat3,
  offset: Vec3,
  a: Vec3,
  d: Vec3,
): void {
  lent[0] = x[0] * a[0] + x[1] * a[1] + x[2] * a[2] + offset[0];
  lent[1] = y[0] * a[0] + y[1] * a[1] + y[2] * a[2] + offset[1];
  lent[2] = z[0] * a[0] + z[1] * a[1] + z[2] * a[2] + offset[2];
  lent[3] = x[0] * d[0] + x[1] * d[1] + x[2] * d[2];
  lent[4] = y[0] * d[0] + y[1] * d[1] + y[2] * d[2];
  lent[5] = z[0] * d[0] + z[1] * d[1] + z[2] * d[2];
  crossRay(out, shape, lent);
}

/** The same for a single ray, given by the coordinates of its origin and its direction. */
export function crossShape(
  out: Interval,
  shape: UnitShape,
  ox: number,
  oy: number,
  oz: number,
  dx: number,
  dy: number,
  dz: number,
): void {
  const ray = unitRay();
  ray[0] = ox;
  ray[1] = oy;
  ray[2] = oz;
  ray[3] = dx;
  ray[4] = dy;
  ray[5] = dz;
  crossRay(out, shape, ray);
}

/**
 * Writes into `out` where a ray lies inside a unit shape.
 *
 * Allocates nothing. All shapes are convex, so the stretch is one interval.
 */
export function crossRay(out: Interval, shape: UnitShape, ray: Float64Array): void {
  const ox = ray[0];
  const oy = ray[1];
  const oz = ray[2];
  const dx = ray[3];
  const dy = ray[4];
  const dz = ray[5];
  out.enter = Number.NEGATIVE_INFINITY;
  out.leave = Number.POSITIVE_INFINITY;
  switch (shape.kind) {
    case 'ball':
      clipQuadric(
        out,
        dx * dx + dy * dy + dz * dz,
        ox * dx + oy * dy + oz * dz,
        ox * ox + oy * oy + oz * oz - 1,
      );
      return;
    case 'cylinder':
      clipSlab(out, oz, dz);
      clipQuadric(out, dx * dx + dy * dy, ox * dx + oy * dy, ox * ox + oy * oy - 1);
      return;
    case 'box':
      clipSlab(out, ox, dx);
      clipSlab(out, oy, dy);
      clipSlab(out, oz, dz);
      return;
    case 'cone': {
      clipSlab(out, oz, dz);
      const slope = (shape.top - 1) / 2;
      const or = (1 + shape.top) / 2 + slope * oz;
      const dr = slope * dz;
      const a = dx * dx + dy * dy - dr * dr;
      const b = ox * dx + oy * dy - or * dr;
      const c = ox * ox + oy * oy - or * or;
      if (a > TINY) clipQuadric(out, a, b, c);
      else clipSteepCone(out, a, b, c, dr);
      return;
    }
    case 'capsule':
      crossCapsule(out, shape.half, ox, oy, oz, dx, dy, dz);
      return;
  }
}

/** A capsule is entered through its wall, or else through the ball at the end beyond which the wall's line is met. */
function crossCapsule(
  out: Interval,
  half: number,
  ox: number,
  oy: number,
  oz: number,
  dx: number,
  dy: number,
  dz: number,
): void {
  clipQuadric(out, dx * dx + dy * dy, ox * dx + oy * dy, ox * ox + oy * oy - 1);
  if (!(out.leave > out.enter)) return;
  const end = (t: number, sense: 1 | -1): number => {
    // along the axis the wall is never met: t is infinite and the ray ends at the ball it runs to
    const z = Number.isFinite(t) ? oz + t * dz : sense * dz * Number.POSITIVE_INFINITY;
    return Math.abs(z) <= half ? t : ballRoot(ox, oy, oz - Math.sign(z) * half, dx, dy, dz, sense);
  };
  const enter = end(out.enter, -1);
  const leave = end(out.leave, 1);
  // a ball that is missed gives NaN, which must not get out
  const isHit = leave > enter;
  out.enter = isHit ? enter : Number.NEGATIVE_INFINITY;
  out.leave = isHit ? leave : Number.NEGATIVE_INFINITY;
}

/** First (sense −1) or last crossing of the unit ball's surface; NaN when the ray misses it. */
function ballRoot(
  ox: number,
  oy: number,
  oz: number,
  dx: number,
  dy: number,
  dz: number,
  sense: 1 | -1,
): number {
  const a = dx * dx + dy * dy + dz * dz;
  const b = ox * dx + oy * dy + oz * dz;
  const c = ox * ox + oy * oy + oz * oz - 1;
  return (-b + sense * Math.sqrt(b * b - a * c)) / a;
}

/** Keeps |o + t d| ≤ 1 of one coordinate. */
function clipSlab(out: Interval, o: number, d: number): void {
  if (d === 0) {
    if (Math.abs(o) > 1) out.leave = Number.NEGATIVE_INFINITY;
    return;
  }
  const a = (-1 - o) / d;
  const b = (1 - o) / d;
  out.enter = Math.max(out.enter, Math.min(a, b));
  out.leave = Math.min(out.leave, Math.max(a, b));
}

/** Keeps a t² + 2 b t + c ≤ 0 with a ≥ 0 (a = 0: the ray runs along the axis of a cylinder). */
function clipQuadric(out: Interval, a: number, b: number, c: number): void {
  if (a < TINY) {
    if (c > 0) out.leave = Number.NEGATIVE_INFINITY;
    return;
  }
  const disc = b * b - a * c;
  if (disc <= 0) {
    out.leave = Number.NEGATIVE_INFINITY;
    return;
  }
  // the roots as q/a and c/q: neither loses digits when a is small
  const q = b > 0 ? -b - Math.sqrt(disc) : -b + Math.sqrt(disc);
  out.enter = Math.max(out.enter, b > 0 ? q / a : c / q);
  out.leave = Math.min(out.leave, b > 0 ? c / q : q / a);
}

/**
 * Keeps x² + y² ≤ r², that is a t² + 2 b t + c ≤ 0, where x, y and the radius r all run linearly along a ray that is as steep as the
 * cone's side or steeper: a ≤ 0. Within the slab r > 0, so what is kept there is one interval even where the quadric opens the other way.
 *
 * @param dr  change of the radius along the ray
 */
function clipSteepCone(out: Interval, a: number, b: number, c: number, dr: number): void {
  if (a > -TINY) {
    // one crossing: 2 b t + c ≤ 0
    if (Math.abs(b) < TINY) {
      if (c > 0) out.leave = Number.NEGATIVE_INFINITY;
    } else if (b > 0) out.leave = Math.min(out.leave, -c / (2 * b));
    else out.enter = Math.max(out.enter, -c / (2 * b));
    return;
  }
  // The ray is steeper than the side: it is inside before the first crossing or after the second.
  const disc = b * b - a * c;
  if (disc <= 0) return;
  const q = b > 0 ? -b - Math.sqrt(disc) : -b + Math.sqrt(disc);
  const first = Math.min(q / a, c / q);
  const second = Math.max(q / a, c / q);
  // of the two stretches only the one on the real nappe (r > 0) meets the slab
  if (dr > 0) out.enter = Math.max(out.enter, second);
  else out.leave = Math.min(out.leave, first);
}

const TINY = 1e-14;
