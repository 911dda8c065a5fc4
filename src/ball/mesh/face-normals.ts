import type { Mesh } from './mesh.js';

/** Outward unit normals, x y z of each triangle; zero where a triangle has no area. */
export function faceNormals({ positions: p, triangles }: Mesh): Float64Array {
  const normals = new Float64Array(triangles.length);
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [3 * triangles[i], 3 * triangles[i + 1], 3 * triangles[i + 2]];
    const [bx, by, bz] = [p[b] - p[a], p[b + 1] - p[a + 1], p[b + 2] - p[a + 2]];
    const [cx, cy, cz] = [p[c] - p[a], p[c + 1] - p[a + 1], p[c + 2] - p[a + 2]];
    const [x, y, z] = [by * cz - bz * cy, bz * cx - bx * cz, bx * cy - by * cx];
    const length = Math.sqrt(x * x + y * y + z * z);
    if (length === 0) continue;
    normals[i] = x / length;
    normals[i + 1] = y / length;
    normals[i + 2] = z / length;
  }
  return normals;
}
