import type { Bore, Hole, HoleTip } from '../../layout/hole.js';
import { type Mat3, mulVec } from '../../math/mat3.js';
import { sin, tan } from '../../math/sin-cos.js';
import { addScaled, cross, dot, scale, sub, unit, type Vec3 } from '../../math/vec3.js';
import type { UnitShape } from '../solid/part.js';
import { crossRay, type Interval, unitRay } from '../solid/ray-interval.js';

/** Half the point angle of a twist drill, rad (118° point: common practice). */
const HALF_POINT_ANGLE = (59 * Math.PI) / 180;

/**
 * What a drill leaves: a straight wall of some radius and depth along an axis, and a tip below it.
 * Lengths in m; the axis starts at the mouth's centre on the ball and runs inward along `d`.
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

export function boreSolid(
  hole: Pick<Hole, 'mouth_B' | 'axis_B' | 'tip'>,
  bore: Bore,
  ballRadius: number,
  tip: HoleTip = hole.tip,
): BoreSolid {
  const d = hole.axis_B;
  const u = unit(cross(d, Math.abs(d[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0]));
  return { mouth: scale(ballRadius, hole.mouth_B), d, u, v: cross(d, u), ...bore, tip };
}

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
      return depth + (radius - r) / tan(HALF_POINT_ANGLE);
    case 'round':
      return depth + Math.sqrt(Math.max(0, radius * radius - r * r));
  }
}

/** Depth of the middle of the lowest ball of the bore's radius that the bore holds, m; 0 where it holds none. */
export function lowestBallDepth({ radius, depth, tip }: BoreSolid): number {
  const below = {
    flat: -radius,
    cone: radius / tan(HALF_POINT_ANGLE) - radius / sin(HALF_POINT_ANGLE),
    round: 0,
  };
  return Math.max(0, depth + below[tip]);
}

/** Start of the ray parallel to the axis through the point (x, y) of the bore's unit disk. */
export const rayStart = (bore: BoreSolid, x: number, y: number): Vec3 =>
  addScaled(addScaled(bore.mouth, bore.radius * x, bore.u), bore.radius * y, bore.v);

/** Stretch of the ray a + t d inside a bore, wall and tip together; empty when enter ≥ leave. */
export function insideBore(bore: BoreSolid, a: Vec3, d: Vec3): Readonly<Interval> {
  return passesBy(bore, a, d) ? NOWHERE : insideNearBore(bore, a, d);
}

const NOWHERE: Readonly<Interval> = { enter: 0, leave: 0 };

/** How far along the ray a + t d a bore begins; infinite where the ray misses it. */
export function entryOf(bore: BoreSolid, a: Vec3, d: Vec3): number {
  const { enter, leave } = insideBore(bore, a, d);
  return leave > enter ? enter : Number.POSITIVE_INFINITY;
}

/**
 * Whether a line keeps farther from a bore's axis than the wall: most do. With n = d × axis, |rel · n| / |n| is how far the two keep
 * apart. Written out, for it is asked of every ray and bore.
 */
function passesBy({ mouth, d: axis, radius }: BoreSolid, a: Vec3, d: Vec3): boolean {
  const nx = d[1] * axis[2] - d[2] * axis[1];
  const ny = d[2] * axis[0] - d[0] * axis[2];
  const nz = d[0] * axis[1] - d[1] * axis[0];
  const apart = (a[0] - mouth[0]) * nx + (a[1] - mouth[1]) * ny + (a[2] - mouth[2]) * nz;
  return apart ** 2 > radius ** 2 * (nx * nx + ny * ny + nz * nz);
}

function insideNearBore(bore: BoreSolid, a: Vec3, d: Vec3): Interval {
  const rel = sub(a, bore.mouth);
  const k = 1 / bore.radius;
  const oz = dot(rel, bore.d);
  const dz = dot(d, bore.d);
  const ray = unitRay();
  ray[0] = k * dot(rel, bore.u);
  ray[1] = k * dot(rel, bore.v);
  ray[3] = k * dot(d, bore.u);
  ray[4] = k * dot(d, bore.v);
  /** Along the axis each solid has a unit frame of its own. */
  const along = (o: number, d: number): Float64Array => {
    ray[2] = o;
    ray[5] = d;
    return ray;
  };
  // The wall starts above the mouth, so that the ball's curved surface lies all below, even where a vent
  // runs in at a slant of up to 60°.
  const above = 2 * bore.radius;
  const half = (bore.depth + above) / 2;
  const wall: Interval = { enter: 0, leave: 0 };
  crossRay(wall, CYLINDER, along((oz + above) / half - 1, dz / half));
  if (bore.tip === 'flat') return wall;
  const point: Interval = { enter: 0, leave: 0 };
  if (bore.tip === 'cone') {
    const h = (depthAt(bore, 0) - bore.depth) / 2;
    crossRay(point, DRILL_POINT, along((oz - bore.depth) / h - 1, dz / h));
  } else {
    crossRay(point, BALL, along(k * (oz - bore.depth), k * dz));
  }
  if (!(point.leave > point.enter)) return wall;
  if (!(wall.leave > wall.enter)) return point;
  return { enter: Math.min(wall.enter, point.enter), leave: Math.max(wall.leave, point.leave) };
}

const CYLINDER: UnitShape = { kind: 'cylinder' };
const DRILL_POINT: UnitShape = { kind: 'cone', top: 0 };
const BALL: UnitShape = { kind: 'ball' };
