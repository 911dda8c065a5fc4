import type { SectionPlane } from '../../src/ball/section/section-plane.js';
import { addScaled, cross, unit, type Vec3, ZERO } from '../../src/math/vec3.js';

/** The plane square to a direction, at a distance from Bo. */
export function planeAcross(normal: Vec3, at: number): SectionPlane {
  const n = unit(normal);
  const u_C = unit(cross(n, Math.abs(n[0]) < 0.8 ? [1, 0, 0] : [0, 1, 0]));
  return { origin_C: addScaled(ZERO, at, n), u_C, v_C: cross(n, u_C) };
}
