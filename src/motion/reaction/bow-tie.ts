import { acos } from '../../math/atan.js';
import { clamp } from '../../math/clamp.js';
import { symmetricEigen } from '../../math/eigen3.js';
import { hypot } from '../../math/hypot.js';
import { addMat, type Mat3, mulVec, outer, scaleMat, ZERO_MAT } from '../../math/mat3.js';
import { add, addScaled, cross, dot, scale, sub, unit, type Vec3, ZERO } from '../../math/vec3.js';
import type { Shot } from '../shot/shot.js';
import { visibleTurns } from './flare.js';

/** One of the two places where the rings cross. */
interface BowTiePoint {
  /** Unit vector from Bo, expressed in B. */
  readonly point_B: Vec3;
  /** Root mean square of the arcs from the rings to the point, rad. */
  readonly spread: number;
}

/**
 * Rings cross at two places when their axis migrates along an arc: its spread along the arc (root mean square) must be at least the
 * first of these, rad, and at least the second times its spread across. Within each turn the axis sways in a loop even on a ball
 * that does not flare, whose rings all coincide.
 */
const LEAST_WANDER = 0.005;
const LEAST_STRETCH = 2;

/** Two crossings with a greater cosine of the arc between them are one: rings far off their equators may lie inside one another. */
const MERGED = 0.9;

const MOST_ROUNDS = 50;
const SETTLED = 1e-13;

/** The circles of all rings, summed up: means of a aᵀ and of h a over the angle turned. */
interface Circles {
  readonly axes: Mat3;
  readonly heights: Vec3;
}

/**
 * Where the oil rings cross: the two points nearest to the circles of all rings, the one farther toward
 * the fingers (y of B) first. Null when the rings hardly separate, or when less than a turn was rolled.
 *
 * A sample draws the circle a·p = h about its axis a. Each point minimises the mean of (a·p − h)² over the angle
 * turned in oil, on its own side of the arc along which the axis migrates (Gauss–Newton on the sphere). The
 * axis need not keep to one great circle, so the rings need not meet in one point: see `spread`.
 */
export function bowTie(shot: Shot): readonly [BowTiePoint, BowTiePoint] | null {
  const turns = visibleTurns(shot);
  if (!(turns >= 1)) return null;
  const weights = weightsUntil(shot, 2 * Math.PI * turns);
  const circles = circlesOf(shot, weights);
  const { values, axes } = symmetricEigen(circles.axes);
  const [sway, wander] = values.map((value) => Math.sqrt(Math.max(0, value)));
  if (!(wander >= LEAST_WANDER && wander >= LEAST_STRETCH * sway)) return null;
  const across_B = axes[0]; // square to the arc of the axis
  const points = [across_B, scale(-1, across_B)].map((from_B) => {
    const point_B = nearestTo(circles, from_B);
    return { point_B, spread: spreadAt(shot, weights, point_B) };
  });
  if (dot(points[0].point_B, points[1].point_B) > MERGED) return null;
  points.sort((a, b) => b.point_B[1] - a.point_B[1]);
  return [points[0], points[1]];
}

/** Weight of each sample: half the angle turned between its neighbours, as a share of `end`; nothing past `end`. */
function weightsUntil({ phase }: Shot, end: number): Float64Array {
  const until = (i: number): number => Math.min(end, phase[Math.min(phase.length - 1, Math.max(0, i))]);
  return phase.map((_, i) => (until(i + 1) - until(i - 1)) / (2 * end));
}

function circlesOf(shot: Shot, weights: Float64Array): Circles {
  let axes = ZERO_MAT;
  let heights = ZERO;
  weights.forEach((weight, i) => {
    const { axis_B, height } = circleAt(shot, i);
    axes = addMat(axes, scaleMat(weight, outer(axis_B, axis_B)));
    heights = addScaled(heights, weight * height, axis_B);
  });
  return { axes, heights };
}

function circleAt(
  { axis_B, contact_B }: Shot,
  i: number,
): { readonly axis_B: Vec3; readonly height: number } {
  const a: Vec3 = [axis_B[3 * i], axis_B[3 * i + 1], axis_B[3 * i + 2]];
  return { axis_B: a, height: dot(a, [contact_B[3 * i], contact_B[3 * i + 1], contact_B[3 * i + 2]]) };
}

/** The point of the sphere, on one side, that misses the circles least. */
function nearestTo({ axes, heights }: Circles, from_B: Vec3): Vec3 {
  let p = from_B;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const u = unit(cross(p, Math.abs(p[0]) < 0.5 ? [1, 0, 0] : [0, 1, 0]));
    const v = cross(p, u);
    const slope = sub(mulVec(axes, p), heights);
    const [Au, Av] = [mulVec(axes, u), mulVec(axes, v)];
    const [uu, uv, vv] = [dot(u, Au), dot(u, Av), dot(v, Av)];
    const k = 1 / (uu * vv - uv * uv);
    const alongU = k * (uv * dot(v, slope) - vv * dot(u, slope));
    const alongV = k * (uv * dot(u, slope) - uu * dot(v, slope));
    p = unit(add(p, add(scale(alongU, u), scale(alongV, v))));
    if (hypot(alongU, alongV) < SETTLED) break;
  }
  return p;
}

/** Root mean square of the arcs from the rings to a point, rad. */
function spreadAt(shot: Shot, weights: Float64Array, point_B: Vec3): number {
  const sum = weights.reduce((total, weight, i) => {
    const { axis_B, height } = circleAt(shot, i);
    const arc = acos(clamp(dot(axis_B, point_B), -1, 1)) - acos(clamp(height, -1, 1));
    return total + weight * arc * arc;
  }, 0);
  return Math.sqrt(sum);
}
