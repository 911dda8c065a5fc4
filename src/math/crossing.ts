import { atan2 } from './atan.js';
import { cos } from './sin-cos.js';
import { tangentToward } from './sphere.js';
import { add, cross, dot, norm, scale, unit, type Vec3 } from './vec3.js';

/** A side as seen from outside the ball, on the way from the first centre to the second. */
export type Side = 'left' | 'right';

/** A compass set on the ball: the circle of all points at `arc` (rad) from `centre_B`. */
interface Swing {
  readonly centre_B: Vec3;
  readonly arc: number;
}

/**
 * Where two tape arcs swung from two marks meet, on one side of the way from the first mark to the second.
 *
 * The point is α a + β b ± γ (a × b): α and β follow from the cosines of the two arcs, γ from the point's length of 1. Arcs that
 * fall short of each other, or lie one inside the other, do not meet; the result is then the point on the great circle through both marks
 * (γ = 0) that lies nearest to both arcs.
 *
 * @returns a unit vector; NaN when the two marks coincide or are opposite, since then no pair of arcs fixes a point
 */
export function crossingOf(first: Swing, second: Swing, side: Side): Vec3 {
  const [a, b] = [first.centre_B, second.centre_B];
  const normal = cross(a, b);
  const between = dot(a, b);
  const sine2 = dot(normal, normal);
  const [cosA, cosB] = [cos(first.arc), cos(second.arc)];
  const alpha = (cosA - between * cosB) / sine2;
  const beta = (cosB - between * cosA) / sine2;
  const onWay = add(scale(alpha, a), scale(beta, b));
  const height = Math.sqrt(Math.max(0, 1 - dot(onWay, onWay)) / sine2);
  return unit(add(onWay, scale(side === 'left' ? height : -height, normal)));
}

/** On which side of the way from `a` to `b` a point lies. */
export const sideOf = (a: Vec3, b: Vec3, point: Vec3): Side =>
  dot(cross(a, b), point) >= 0 ? 'left' : 'right';

/**
 * Angle at which arcs from two marks cross at a point, rad in [0, π/2]; a quarter turn is best.
 *
 * An error e of either arc moves the point by about e / sin(angle). NaN when the point lies on a mark.
 */
export function crossingAngle(a: Vec3, b: Vec3, point: Vec3): number {
  const towardA = tangentToward(point, a);
  const towardB = tangentToward(point, b);
  return atan2(norm(cross(towardA, towardB)), Math.abs(dot(towardA, towardB)));
}
