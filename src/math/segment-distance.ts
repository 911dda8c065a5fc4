import { clamp } from './clamp.js';
import { addScaled, dot, norm, sub, type Vec3 } from './vec3.js';

/** A straight piece of a line between two points. */
export interface Segment {
  readonly from: Vec3;
  readonly to: Vec3;
}

/**
 * Least distance of two segments, in the unit of their points.
 *
 * Ericson, Real-Time Collision Detection, §5.1.9: the nearest points of the two lines, brought back to the segments one after the
 * other. Parallel ones are taken from the start of the first. A segment may be a single point.
 */
export function segmentDistance(first: Segment, second: Segment): number {
  const d1 = sub(first.to, first.from);
  const d2 = sub(second.to, second.from);
  const r = sub(first.from, second.from);
  const [a, e, f] = [dot(d1, d1), dot(d2, d2), dot(d2, r)];
  const [b, c] = [dot(d1, d2), dot(d1, r)];
  const denominator = a * e - b * b;
  let s = denominator > PARALLEL * a * e ? clamp((b * f - c * e) / denominator, 0, 1) : 0;
  let t = e > 0 ? (b * s + f) / e : 0;
  if (t < 0 || t > 1 || e === 0) {
    t = clamp(t, 0, 1);
    s = a > 0 ? clamp((b * t - c) / a, 0, 1) : 0;
  }
  return norm(sub(addScaled(first.from, s, d1), addScaled(second.from, t, d2)));
}

/** Squared sine of an angle below which two directions are one, as far as doubles tell. */
const PARALLEL = 1e-14;
