import type { Mat3 } from '../../math/mat3.js';
import type { Vec3 } from '../../math/vec3.js';
import type { UnitShape } from './part.js';

/** Stretch [enter, leave] of a ray's parameter inside a convex solid; empty when enter ≥ leave. */
export interface Interval {
  enter: number;
  leave: number;
}

/**
 * A ray q(t) = o + t d in a shape's unit frame: the three components of o, then those of d. Callers that cross many rays use one array for
 * all: numbers passed one by one become garbage where the function is not inlined, and were a quarter of all garbage of an answer.
 */
export const unitRay = (): Float64Array => new Float64Array(6);

/**
 * Writes into `out` where the ray a + t d lies inside a unit shape under an affine map.
 *
 * @param lent         overwritten
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
  out.enter = Number.NEGATIVE_INFINITY;
  out.leave = Number.POSITIVE_INFINITY;
  switch (shape.kind) {
    case 'ball':
      setBall(ray, ray[2]);
      clipQuadric(out);
      return;
    case 'cylinder':
      clipSlab(out, ray, 2);
      setWall(ray);
      clipQuadric(out);
      return;
    case 'box':
      clipSlab(out, ray, 0);
      clipSlab(out, ray, 1);
      clipSlab(out, ray, 2);
      return;
    case 'cone':
      clipSlab(out, ray, 2);
      clipCone(out, shape.top, ray);
      return;
    case 'capsule':
      setWall(ray);
      clipQuadric(out);
      if (out.leave > out.enter) endCapsule(out, shape.half, ray);
      return;
  }
}

/** The quadric that clips a ray, a t² + 2 b t + c ≤ 0: one function writes it, the next reads it. */
const quadric = new Float64Array(3);

/** The unit ball. @param oz  where the ray starts along z, as seen from the ball's middle */
function setBall(ray: Float64Array, oz: number): void {
  quadric[0] = ray[3] * ray[3] + ray[4] * ray[4] + ray[5] * ray[5];
  quadric[1] = ray[0] * ray[3] + ray[1] * ray[4] + oz * ray[5];
  quadric[2] = ray[0] * ray[0] + ray[1] * ray[1] + oz * oz - 1;
}

/** The wall of the unit cylinder. */
function setWall(ray: Float64Array): void {
  quadric[0] = ray[3] * ray[3] + ray[4] * ray[4];
  quadric[1] = ray[0] * ray[3] + ray[1] * ray[4];
  quadric[2] = ray[0] * ray[0] + ray[1] * ray[1] - 1;
}

/** Keeps what lies within the side of a cone. @param top  its radius at z = 1; at z = −1 it is one */
function clipCone(out: Interval, top: number, ray: Float64Array): void {
  const slope = (top - 1) / 2;
  const or = (1 + top) / 2 + slope * ray[2];
  const dr = slope * ray[5];
  quadric[0] = ray[3] * ray[3] + ray[4] * ray[4] - dr * dr;
  quadric[1] = ray[0] * ray[3] + ray[1] * ray[4] - or * dr;
  quadric[2] = ray[0] * ray[0] + ray[1] * ray[1] - or * or;
  if (quadric[0] > TINY) clipQuadric(out);
  else clipSteepCone(out, dr > 0);
}

/** A capsule is entered through its wall or, where the ray meets the wall's cylinder beyond an end, through the ball at that end. */
function endCapsule(out: Interval, half: number, ray: Float64Array): void {
  const end = (t: number, sense: 1 | -1): number => {
    // along the axis the wall is never met: t is infinite and the ray ends at the ball it runs to
    const z = Number.isFinite(t) ? ray[2] + t * ray[5] : sense * ray[5] * Number.POSITIVE_INFINITY;
    return Math.abs(z) <= half ? t : ballRoot(ray, ray[2] - Math.sign(z) * half, sense);
  };
  const enter = end(out.enter, -1);
  const leave = end(out.leave, 1);
  // a ball that is missed gives NaN, which must not get out
  const isHit = leave > enter;
  out.enter = isHit ? enter : Number.NEGATIVE_INFINITY;
  out.leave = isHit ? leave : Number.NEGATIVE_INFINITY;
}

/** First (sense −1) or last crossing of a unit ball's surface; NaN when the ray misses it. @param oz  as in `setBall` */
function ballRoot(ray: Float64Array, oz: number, sense: 1 | -1): number {
  setBall(ray, oz);
  const [a, b, c] = quadric;
  return (-b + sense * Math.sqrt(b * b - a * c)) / a;
}

/** Keeps |o + t d| ≤ 1 of one coordinate. */
function clipSlab(out: Interval, ray: Float64Array, axis: 0 | 1 | 2): void {
  const o = ray[axis];
  const d = ray[axis + 3];
  if (d === 0) {
    if (Math.abs(o) > 1) out.leave = Number.NEGATIVE_INFINITY;
    return;
  }
  const a = (-1 - o) / d;
  const b = (1 - o) / d;
  out.enter = Math.max(out.enter, Math.min(a, b));
  out.leave = Math.min(out.leave, Math.max(a, b));
}

/** Keeps the inside of a quadric with a ≥ 0 (a = 0: the ray is parallel to the axis of a cylinder). */
function clipQuadric(out: Interval): void {
  const a = quadric[0];
  const b = quadric[1];
  const c = quadric[2];
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
 * Keeps x² + y² ≤ r², that is a t² + 2 b t + c ≤ 0, where x, y and the radius r are all linear along a ray that is as steep as the
 * cone's side or steeper: a ≤ 0. Within the slab r > 0, so one interval is kept even though the quadric opens the other way.
 *
 * @param widens  whether the radius grows along the ray
 */
function clipSteepCone(out: Interval, widens: boolean): void {
  const a = quadric[0];
  const b = quadric[1];
  const c = quadric[2];
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
  // only one of the two stretches lies on the real nappe (r > 0) and meets the slab
  if (widens) out.enter = Math.max(out.enter, second);
  else out.leave = Math.min(out.leave, first);
}

/** Coefficients of a quadric below this are rounding: those of a ray in a unit frame are sums of squares of about 1. */
const TINY = 1e-14;
