import type { Bore, Hole, HoleTip } from '../../layout/hole.js';
import { type Mat3, mulVec } from '../../math/mat3.js';
import { sin, tan } from '../../math/sin-cos.js';
import { addScaled, cross, scale, unit, type Vec3 } from '../../math/vec3.js';
import type { UnitShape } from '../solid/part.js';
import { crossRay, type Interval, unitRay } from '../solid/ray-interval.js';

/** Half the point angle of a twist drill, rad (118° point: common practice). */
const HALF_POINT_ANGLE = (59 * Math.PI) / 180;
const POINT_SLOPE = tan(HALF_POINT_ANGLE);

/**
 * The space that a drill cuts: a straight wall of some radius and depth along an axis, and a tip below it.
 * Lengths in m. The axis starts at the centre of the mouth, on the ball, and runs inward along `d`.
 */
export interface BoreSolid {
  readonly mouth: Vec3;
  readonly d: Vec3;
  readonly u: Vec3; // u, v: unit vectors across
  readonly v: Vec3;
  readonly radius: number;
  readonly depth: number;
  readonly tip: HoleTip;
}

/**
 * One bore of a hole, in B.
 *
 * @param ballRadius  m
 * @param tip         the bore's own, where it differs from the hole's
 */
export function boreSolid(
  hole: Pick<Hole, 'mouth_B' | 'axis_B' | 'tip'>,
  bore: Bore,
  ballRadius: number,
  tip: HoleTip = hole.tip,
): BoreSolid {
  const d = hole.axis_B;
  const u = unitAcross(d);
  return { mouth: scale(ballRadius, hole.mouth_B), d, u, v: cross(d, u), ...bore, tip };
}

/** Some unit vector perpendicular to a direction (a unit vector). */
export const unitAcross = (d: Vec3): Vec3 => unit(cross(d, Math.abs(d[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0]));

/** A bore in another frame, by a rotation or a reflection. */
export const turnBore = (R: Mat3, bore: BoreSolid): BoreSolid => ({
  ...bore,
  mouth: mulVec(R, bore.mouth),
  d: mulVec(R, bore.d),
  u: mulVec(R, bore.u),
  v: mulVec(R, bore.v),
});

/** Depth of a bore at distance r from its axis, tip included, m. */
export function depthAt({ radius, depth, tip }: BoreSolid, r: number): number {
  switch (tip) {
    case 'flat':
      return depth;
    case 'cone':
      return depth + (radius - r) / POINT_SLOPE;
    case 'round':
      return depth + Math.sqrt(Math.max(0, radius * radius - r * r));
  }
}

/** Depth of the centre of the lowest ball with the bore's radius that fits into the bore, m; 0 where none fits. */
export function lowestBallDepth({ radius, depth, tip }: BoreSolid): number {
  const below = {
    flat: -radius,
    cone: radius / POINT_SLOPE - radius / sin(HALF_POINT_ANGLE),
    round: 0,
  };
  return Math.max(0, depth + below[tip]);
}

/** Start of the ray parallel to the axis through the point (x, y) of the bore's unit disk. */
export const rayStart = (bore: BoreSolid, x: number, y: number): Vec3 =>
  addScaled(addScaled(bore.mouth, bore.radius * x, bore.u), bore.radius * y, bore.v);

/** Writes into `out` where the ray a + t d runs inside a bore, wall and tip together; empty when enter ≥ leave. Allocates nothing. */
export function crossBore(out: Interval, bore: BoreSolid, a: Vec3, d: Vec3): void {
  if (passesBy(bore, a, d)) out.enter = out.leave = 0;
  else crossNearBore(out, bore, a, d);
}

/** Value of t at which the ray a + t d enters a bore; infinite where the ray misses it. */
export function entryOf(bore: BoreSolid, a: Vec3, d: Vec3): number {
  const inside: Interval = { enter: 0, leave: 0 };
  crossBore(inside, bore, a, d);
  return inside.leave > inside.enter ? inside.enter : Number.POSITIVE_INFINITY;
}

/**
 * Whether a line passes a bore's axis at more than the bore's radius, as most do. With n = d × axis, |rel · n| / |n| is the distance of
 * the two lines. Written out for speed, since it runs for every ray and bore.
 */
function passesBy({ mouth, d: axis, radius }: BoreSolid, a: Vec3, d: Vec3): boolean {
  const nx = d[1] * axis[2] - d[2] * axis[1];
  const ny = d[2] * axis[0] - d[0] * axis[2];
  const nz = d[0] * axis[1] - d[1] * axis[0];
  const apart = (a[0] - mouth[0]) * nx + (a[1] - mouth[1]) * ny + (a[2] - mouth[2]) * nz;
  return apart ** 2 > radius ** 2 * (nx * nx + ny * ny + nz * nz);
}

/** Crosses wall and tip in their unit frames, which differ along the axis only. */
function crossNearBore(out: Interval, bore: BoreSolid, a: Vec3, d: Vec3): void {
  const { mouth, d: axis, u, v, radius, depth, tip } = bore;
  const k = 1 / radius;
  const x = a[0] - mouth[0];
  const y = a[1] - mouth[1];
  const z = a[2] - mouth[2];
  const oz = x * axis[0] + y * axis[1] + z * axis[2];
  const dz = d[0] * axis[0] + d[1] * axis[1] + d[2] * axis[2];
  ray[0] = k * (x * u[0] + y * u[1] + z * u[2]);
  ray[1] = k * (x * v[0] + y * v[1] + z * v[2]);
  ray[3] = k * (d[0] * u[0] + d[1] * u[1] + d[2] * u[2]);
  ray[4] = k * (d[0] * v[0] + d[1] * v[1] + d[2] * v[2]);
  // The wall starts above the mouth, so that all of the ball's curved surface lies below its start, even for a vent
  // that slants by 60°.
  const above = 2 * radius;
  const half = (depth + above) / 2;
  ray[2] = (oz + above) / half - 1;
  ray[5] = dz / half;
  crossRay(out, CYLINDER, ray);
  if (tip === 'flat') return;
  if (tip === 'cone') {
    const h = (depthAt(bore, 0) - depth) / 2;
    ray[2] = (oz - depth) / h - 1;
    ray[5] = dz / h;
    crossRay(inTip, DRILL_POINT, ray);
  } else {
    ray[2] = k * (oz - depth);
    ray[5] = k * dz;
    crossRay(inTip, BALL, ray);
  }
  if (!(inTip.leave > inTip.enter)) return;
  const meetsWall = out.leave > out.enter;
  out.enter = meetsWall ? Math.min(out.enter, inTip.enter) : inTip.enter;
  out.leave = meetsWall ? Math.max(out.leave, inTip.leave) : inTip.leave;
}

// overwritten with each ray
const ray = unitRay();
const inTip: Interval = { enter: 0, leave: 0 };

const CYLINDER: UnitShape = { kind: 'cylinder' };
const DRILL_POINT: UnitShape = { kind: 'cone', top: 0 };
const BALL: UnitShape = { kind: 'ball' };
