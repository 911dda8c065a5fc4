import type { Mesh } from '../../src/ball/mesh/mesh.js';
import { vertexAt } from '../../src/ball/mesh/mesh.js';
import { cross, dot, norm, sub, type Vec3 } from '../../src/math/vec3.js';

/**
 * How many times a closed mesh goes around a point: 1 inside, 0 outside, not whole on the surface.
 *
 * The solid angles of all triangles over 4π (Van Oosterom & Strackee, The solid angle of a plane triangle,
 * IEEE Trans. Biomed. Eng. BME-30, 1983). Knows nothing of lines.
 */
export function windingNumber(mesh: Mesh, point: Vec3): number {
  let angle = 0;
  for (let i = 0; i < mesh.triangles.length; i += 3) {
    const a = sub(vertexAt(mesh, mesh.triangles[i]), point);
    const b = sub(vertexAt(mesh, mesh.triangles[i + 1]), point);
    const c = sub(vertexAt(mesh, mesh.triangles[i + 2]), point);
    const [la, lb, lc] = [norm(a), norm(b), norm(c)];
    const below = la * lb * lc + dot(a, b) * lc + dot(b, c) * la + dot(c, a) * lb;
    angle += 2 * Math.atan2(dot(a, cross(b, c)), below);
  }
  return angle / (4 * Math.PI);
}
