import type { Mat3 } from '../../math/mat3.js';
import type { Vec3 } from '../../math/vec3.js';
import type { UnitShape } from './part.js';

/** Stretch [enter, leave] of a ray's parameter inside a convex solid; empty when enter ≥ leave. */
export interface Interval {
  enter: number;
  leave: number;
}

/**
 * Writes into `out` where the ray a + t d lies inside a unit shape under an affine map.
 *
 * @param map, offset  back to the shape's unit frame: q = map p + offset
 */
export function crossMapped(
  out: Interval,
  shape: UnitShape,
  [x, y, z]: Mat3,
  offset: Vec3,
  a: Vec3,
  d: Vec3,
): void {
  crossShape(
    out,
    shape,
    x[0] * a[0] + x[1] * a[1] + x[2] * a[2] + offset[0],
    y[0] * a[0] + y[1] * a[1] + y[2] * a[2] + offset[1],
    z[0] * a[0] + z[1] * a[1] + z[2] * a[2] + offset[2],
    x[0] * d[0] + x[1] * d[1] + x[2] * d[2],
    y[0] * d[0] + y[1] * d[1] + y[2] * d[2],
    z[0] * d[0] + z[1] * d[1] + z[2] * d[2],
  );
}

/**
 * Writes into `out` where the ray q(t) = o + t d lies inside a unit shape.
 *
 * Allocates nothing. All shapes are convex, so the stretch is one interval.
 */
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
      const middle = (1 + shape.top) / 2;
      const slope = (shape.top - 1) / 2;
      clipCone(out, ox, oy, middle + slope * oz, dx, dy, slope * dz);
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
 * Keeps x² + y² ≤ r² where x, y and the radius r all run linearly along the ray. Within the slab r > 0, so
 * what is kept there is one interval even where the quadric opens the other way.
 */
function clipCone(
  out: Interval,
  ox: number,
  oy: number,
  or: number,
  dx: number,
  dy: number,
  dr: number,
): void {
  const a = dx * dx + dy * dy - dr * dr;
  const b = ox * dx + oy * dy - or * dr;
  const c = ox * ox + oy * oy - or * or;
  if (a > TINY) {
    clipQuadric(out, a, b, c);
    return;
  }
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
