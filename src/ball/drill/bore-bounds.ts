import { hypot } from '../../math/hypot.js';
import { addScaled, type Vec3 } from '../../math/vec3.js';
import type { Stretch } from '../solid/stretch.js';
import { type BoreSolid, depthAt } from './bore-solid.js';

/** A bounding sphere of a bore: centre and radius, m. */
export interface BoreBounds {
  readonly centre: Vec3;
  readonly radius: number;
}

/** The smallest bounding sphere whose centre lies on the axis. The wall begins twice its radius above the mouth, as in `crossBore`. */
export function boundsOf(bore: BoreSolid): BoreBounds {
  const top = -2 * bore.radius;
  const bottom = depthAt(bore, 0);
  return {
    centre: addScaled(bore.mouth, (top + bottom) / 2, bore.d),
    radius: hypot((bottom - top) / 2, bore.radius),
  };
}

/**
 * Whether a stretch of the ray a + t d stays outside a bore's bounds, and therefore outside the bore.
 *
 * @param a, d  of the ray, in the frame of the bounds
 */
export function keepsClear({ centre, radius }: BoreBounds, a: Vec3, d: Vec3, { s, e }: Stretch): boolean {
  const x = a[0] - centre[0];
  const y = a[1] - centre[1];
  const z = a[2] - centre[2];
  const nearest = -(x * d[0] + y * d[1] + z * d[2]);
  const t = Math.min(e, Math.max(s, nearest));
  return (x + t * d[0]) ** 2 + (y + t * d[1]) ** 2 + (z + t * d[2]) ** 2 > radius * radius;
}
