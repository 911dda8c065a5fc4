import type { PlanePoint } from '../../math/polygon.js';
import { add, cross, dot, scale, sub, type Vec3 } from '../../math/vec3.js';

/** A plane that a core is cut by, with the axes to draw on it: two unit vectors, square to one another, in C. */
export interface SectionPlane {
  /** Where its two coordinates are nought, m. */
  readonly origin_C: Vec3;
  readonly u_C: Vec3;
  readonly v_C: Vec3;
}

/** Toward whoever looks at it with u to the right and v up. */
export const normalOf = ({ u_C, v_C }: SectionPlane): Vec3 => cross(u_C, v_C);

/** Where a point (m) lies when it is seen square to the plane, m. */
export function seenOn({ origin_C, u_C, v_C }: SectionPlane, p_C: Vec3): PlanePoint {
  const r = sub(p_C, origin_C);
  return [dot(r, u_C), dot(r, v_C)];
}

/** The point of C at a place of the plane, m. */
export const pointAt = ({ origin_C, u_C, v_C }: SectionPlane, [u, v]: PlanePoint): Vec3 =>
  add(origin_C, add(scale(u, u_C), scale(v, v_C)));
