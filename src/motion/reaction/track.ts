import { asin, atan2 } from '../../math/atan.js';
import type { Vec3 } from '../../math/vec3.js';

/**
 * Arc from a point of the unit sphere to the nearest point of a track on it, rad.
 *
 * The track is the chain of great-circle pieces between neighbouring points. The two pieces that meet at a point are looked at wherever a
 * pass comes nearest: the nearest of all points may lie on another pass than the nearest piece. Exact for points closer together than
 * the track's bends.
 *
 * @param track    unit vectors, three numbers a point; an empty track is infinitely far
 * @param point    unit vector in the same frame
 * @param ends     a closed track continues from its last point to its first
 */
export function distanceToTrack(track: Float64Array, point: Vec3, ends: 'open' | 'closed' = 'open'): number {
  const count = track.length / 3;
  const isClosed = ends === 'closed';
  const [p0, p1, p2] = point;
  let least = Number.POSITIVE_INFINITY;
  let before = isClosed ? cosineAt(track, count - 1, p0, p1, p2) : Number.NEGATIVE_INFINITY;
  let here = cosineAt(track, 0, p0, p1, p2);
  for (let i = 0; i < count; i++) {
    const next = i + 1 < count ? i + 1 : isClosed ? 0 : -1;
    const after = next < 0 ? Number.NEGATIVE_INFINITY : cosineAt(track, next, p0, p1, p2);
    if (here >= before && here >= after) {
      const last = i > 0 ? i - 1 : isClosed ? count - 1 : -1;
      least = Math.min(least, arcToPoint(track, i, p0, p1, p2));
      if (last >= 0) least = Math.min(least, arcToPiece(track, last, i, p0, p1, p2));
      if (next >= 0) least = Math.min(least, arcToPiece(track, i, next, p0, p1, p2));
    }
    before = here;
    here = after;
  }
  return least;
}

/** Cosine of the arc to a point of a track. */
const cosineAt = (track: Float64Array, i: number, p0: number, p1: number, p2: number): number =>
  p0 * track[3 * i] + p1 * track[3 * i + 1] + p2 * track[3 * i + 2];

/** Arc to a point of a track. */
function arcToPoint(track: Float64Array, i: number, p0: number, p1: number, p2: number): number {
  const u0 = track[3 * i];
  const u1 = track[3 * i + 1];
  const u2 = track[3 * i + 2];
  const x = u1 * p2 - u2 * p1;
  const y = u2 * p0 - u0 * p2;
  const z = u0 * p1 - u1 * p0;
  return atan2(Math.sqrt(x * x + y * y + z * z), u0 * p0 + u1 * p1 + u2 * p2);
}

/**
 * Arc to the great circle through two neighbouring points u and v of a track; infinite where its foot lies outside the piece, which is
 * where (n×u)·p or (v×n)·p is negative, n = u×v.
 */
function arcToPiece(track: Float64Array, i: number, j: number, p0: number, p1: number, p2: number): number {
  const u0 = track[3 * i];
  const u1 = track[3 * i + 1];
  const u2 = track[3 * i + 2];
  const v0 = track[3 * j];
  const v1 = track[3 * j + 1];
  const v2 = track[3 * j + 2];
  const n0 = u1 * v2 - u2 * v1;
  const n1 = u2 * v0 - u0 * v2;
  const n2 = u0 * v1 - u1 * v0;
  const pastU = (n1 * u2 - n2 * u1) * p0 + (n2 * u0 - n0 * u2) * p1 + (n0 * u1 - n1 * u0) * p2;
  const shortOfV = (v1 * n2 - v2 * n1) * p0 + (v2 * n0 - v0 * n2) * p1 + (v0 * n1 - v1 * n0) * p2;
  const length = Math.sqrt(n0 * n0 + n1 * n1 + n2 * n2);
  return pastU >= 0 && shortOfV >= 0 && length > 0
    ? Math.abs(asin((n0 * p0 + n1 * p1 + n2 * p2) / length))
    : Number.POSITIVE_INFINITY;
}
