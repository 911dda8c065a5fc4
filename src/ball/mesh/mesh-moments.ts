import type { Moments } from '../mass/mass-properties.js';
import type { Mesh } from './mesh.js';

/**
 * Moments about Bo of the matter a closed mesh encloses (kg, kg·m, kg·m²), exact but for rounding; negative
 * when the triangles face inward.
 *
 * The sum of the signed tetrahedra that the triangles span with Bo; for one of them, with s the sum of its
 * three corners: V = det/6, ∫p = V s/4, ∫ppᵀ = V (s sᵀ + Σ c cᵀ)/20 (Mirtich, J. Graphics Tools 1(2), 1996;
 * in this form Kallay, J. Graphics Tools 11(2), 2006).
 *
 * @param density  kg/m³
 */
export function meshMoments({ positions: p, triangles }: Mesh, density: number): Moments {
  let volume = 0;
  let [x, y, z] = [0, 0, 0];
  let [xx, yy, zz, xy, xz, yz] = [0, 0, 0, 0, 0, 0];
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [3 * triangles[i], 3 * triangles[i + 1], 3 * triangles[i + 2]];
    const [ax, ay, az] = [p[a], p[a + 1], p[a + 2]];
    const [bx, by, bz] = [p[b], p[b + 1], p[b + 2]];
    const [cx, cy, cz] = [p[c], p[c + 1], p[c + 2]];
    const det = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    const [sx, sy, sz] = [ax + bx + cx, ay + by + cy, az + bz + cz];
    volume += det;
    x += det * sx;
    y += det * sy;
    z += det * sz;
    xx += det * (sx * sx + ax * ax + bx * bx + cx * cx);
    yy += det * (sy * sy + ay * ay + by * by + cy * cy);
    zz += det * (sz * sz + az * az + bz * bz + cz * cz);
    xy += det * (sx * sy + ax * ay + bx * by + cx * cy);
    xz += det * (sx * sz + ax * az + bx * bz + cx * cz);
    yz += det * (sy * sz + ay * az + by * bz + cy * cz);
  }
  const second = density / 120;
  return {
    mass: (density / 6) * volume,
    first: [(density / 24) * x, (density / 24) * y, (density / 24) * z],
    second: [
      [second * xx, second * xy, second * xz],
      [second * xy, second * yy, second * yz],
      [second * xz, second * yz, second * zz],
    ],
  };
}
