import { arcAngle } from '../../math/sphere.js';
import { cross, dot, norm, type Vec3 } from '../../math/vec3.js';

/**
 * Arc from a point of the unit sphere to the nearest point of a track on it, rad.
 *
 * The track is the chain of great-circle pieces between neighbouring points; only the two pieces that meet at
 * its nearest point are looked at, which is exact for points closer together than the track's bends.
 *
 * @param track    unit vectors, three numbers a point; an empty track is infinitely far
 * @param point    unit vector in the same frame
 * @param ends     a closed track goes on from its last point to its first
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
  let arc = arcAngle(pointOf(track, nearest), point);
  const before = ends === 'closed' ? (nearest + count - 1) % count : nearest - 1;
  const after = ends === 'closed' ? (nearest + 1) % count : nearest + 1;
  if (before >= 0) arc = Math.min(arc, arcToPiece(track, before, nearest, point));
  if (after < count) arc = Math.min(arc, arcToPiece(track, nearest, after, point));
  return arc;
}

const pointOf = (track: Float64Array, i: number): Vec3 => [track[3 * i], track[3 * i + 1], track[3 * i + 2]];

/** Arc to the great circle through two neighbouring points of a track; infinite where its foot lies outside the piece. */
function arcToPiece(track: Float64Array, i: number, j: number, point: Vec3): number {
  const from = pointOf(track, i);
  const to = pointOf(track, j);
  const normal = cross(from, to);
  const isInside = dot(cross(normal, from), point) >= 0 && dot(cross(to, normal), point) >= 0;
  return isInside && norm(normal) > 0
    ? Math.abs(Math.asin(dot(normal, point) / norm(normal)))
    : Number.POSITIVE_INFINITY;
}
