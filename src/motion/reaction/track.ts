import { asin, atan2 } from '../../math/atan.js';
import type { Vec3 } from '../../math/vec3.js';

/**
 * Arc from a point of the unit sphere to the nearest point of a track on it, rad.
 *
 * The track is the chain of great-circle pieces between neighbouring points; only the two pieces that meet at
 * its nearest point are looked at, which is exact for points closer together than the track's bends.
 *
 * @param track    unit vectors, three numbers a point; an empty track is infinitely far
 * @param point    unit vector in the same frame
 * @param ends     a closed track continues from its last point to its first
 */
export function distanceToTrack(track: Float64Array, point: Vec3, ends: 'open' | 'closed' = 'open'): number {
  const count = track.length / 3;
  const [p0, p1, p2] = point;
  let nearest = -1;
  let greatest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < count; i++) {
    const cosine = p0 * track[3 * i] + p1 * track[3 * i + 1] + p2 * track[3 * i + 2];
    if (cosine > greatest) {
      greatest = cosine;
      nearest = i;
    }
  }
  if (nearest < 0) return Number.POSITIVE_INFINITY;
  const before = ends === 'closed' ? (nearest + count - 1) % count : nearest - 1;
  const after = ends === 'closed' ? (nearest + 1) % count : nearest + 1;
  const arc = arcToPoint(track, nearest, p0, p1, p2);
  const left = before >= 0 ? arcToPiece(track, before, nearest, p0, p1, p2) : arc;
  const right = after < count ? arcToPiece(track, nearest, after, p0, p1, p2) : arc;
  return Math.min(arc, left, right);
}

/** Arc to a point of a track. */
function arcToPoint(track: Float64Array, i: number, p0: number, p1: number, p2: number): number {
  const [u0, u1, u2] = [track[3 * i], track[3 * i + 1], track[3 * i + 2]];
  const [x, y, z] = [u1 * p2 - u2 * p1, u2 * p0 - u0 * p2, u0 * p1 - u1 * p0];
  return atan2(Math.sqrt(x * x + y * y + z * z), u0 * p0 + u1 * p1 + u2 * p2);
}

/**
 * Arc to the great circle through two neighbouring points u and v of a track; infinite where its foot lies outside the piece, which is
 * where (n×u)·p or (v×n)·p is negative, n = u×v.
 */
function arcToPiece(track: Float64Array, i: number, j: number, p0: number, p1: number, p2: number): number {
  const [u0, u1, u2] = [track[3 * i], track[3 * i + 1], track[3 * i + 2]];
  const [v0, v1, v2] = [track[3 * j], track[3 * j + 1], track[3 * j + 2]];
  const [n0, n1, n2] = [u1 * v2 - u2 * v1, u2 * v0 - u0 * v2, u0 * v1 - u1 * v0];
  const pastU = (n1 * u2 - n2 * u1) * p0 + (n2 * u0 - n0 * u2) * p1 + (n0 * u1 - n1 * u0) * p2;
  const shortOfV = (v1 * n2 - v2 * n1) * p0 + (v2 * n0 - v0 * n2) * p1 + (v0 * n1 - v1 * n0) * p2;
  const length = Math.sqrt(n0 * n0 + n1 * n1 + n2 * n2);
  return pastU >= 0 && shortOfV >= 0 && length > 0
    ? Math.abs(asin((n0 * p0 + n1 * p1 + n2 * p2) / length))
    : Number.POSITIVE_INFINITY;
}
