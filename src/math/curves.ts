import { arcAngle, tangentToward, walk } from './sphere.js';
import { addScaled, cross, dot, norm, rotateAbout, scale, unit, type Vec3 } from './vec3.js';

/* Curves on the unit sphere as chains of points, to be projected and drawn. */

/** Angle between neighbouring points of a drawn curve, rad: its chords are then within 0.1 % of the ball's radius. */
const STEP = 0.05;

/** Unit tangent at `u` that points along the great circle to `v`; any tangent where the two coincide or are opposite. */
export const someTangent = (u: Vec3, v: Vec3): Vec3 =>
  norm(addScaled(v, -dot(u, v), u)) > 1e-9 ? tangentToward(u, v) : anyTangent(u);

const anyTangent = (u: Vec3): Vec3 => unit(cross(u, Math.abs(u[1]) < 0.9 ? [0, 1, 0] : [1, 0, 0]));

/** The shorter great-circle arc between two points. */
export function arcBetween(u: Vec3, v: Vec3): Vec3[] {
  const along = someTangent(u, v);
  return stepped(arcAngle(u, v)).map((arc) => walk(u, along, arc));
}

/** The great circle through a point in the direction of a unit tangent, once round. */
export const greatCircle = (u: Vec3, along: Vec3): Vec3[] =>
  stepped(2 * Math.PI).map((arc) => walk(u, along, arc));

/** The circle of all points at an arc (rad) from a centre, once round. */
export const smallCircle = (centre: Vec3, arc: number): Vec3[] =>
  arcAround(centre, anyTangent(centre), 2 * Math.PI, arc);

/** Points at an arc (rad) from a centre, over a turn (rad, counterclockwise from outside) from a direction. */
export const arcAround = (centre: Vec3, from: Vec3, turn: number, arc: number): Vec3[] =>
  stepped(turn, Math.max(12, Math.abs(turn) / 0.15)).map((angle) =>
    walk(centre, rotateAbout(from, centre, angle), arc),
  );

/** Even steps from 0 to an end, both included. */
function stepped(end: number, least = 1): number[] {
  const count = Math.ceil(Math.max(least, Math.abs(end) / STEP));
  return Array.from({ length: count + 1 }, (_, i) => (end * i) / count);
}

/**
 * The pieces of a curve that lie on the near side, cut where it passes the ball's edge.
 *
 * @param depth  of a point, positive on the near side
 */
export function nearPieces(curve: readonly Vec3[], depth: (u: Vec3) => number): Vec3[][] {
  const pieces: Vec3[][] = [];
  let piece: Vec3[] = [];
  curve.forEach((u, i) => {
    const before = curve[i - 1];
    if (before && depth(before) * depth(u) < 0) piece.push(atEdge(before, u, depth));
    if (depth(u) >= 0) piece.push(u);
    else if (piece.length > 0) {
      pieces.push(piece);
      piece = [];
    }
    // a piece that begins at the edge starts with the cut point, which was pushed above
  });
  if (piece.length > 0) pieces.push(piece);
  return pieces.filter((each) => each.length > 1);
}

const atEdge = (u: Vec3, v: Vec3, depth: (u: Vec3) => number): Vec3 => {
  const share = depth(u) / (depth(u) - depth(v));
  return unit(addScaled(scale(1 - share, u), share, v));
};
