import type { PlanePoint } from '../../math/polygon.js';
import { cross, dot, sub, type Vec3 } from '../../math/vec3.js';

/** A plane that cuts a core, and the axes to draw on it: two perpendicular unit vectors, in C. */
export interface SectionPlane {
  /** Where both coordinates of the plane are 0, m. */
  readonly origin_C: Vec3;
  readonly u_C: Vec3;
  readonly v_C: Vec3;
}

/** The plane's unit normal, toward a viewer who sees u to the right and v up. */
export const normalOf = ({ u_C, v_C }: SectionPlane): Vec3 => cross(u_C, v_C);

/** The projection of a point (m) on the plane, in the plane's coordinates, m. */
export function seenOn({ origin_C, u_C, v_C }: SectionPlane, p_C: Vec3): PlanePoint {
  const r = sub(p_C, origin_C);
  return [dot(r, u_C), dot(r, v_C)];
}
