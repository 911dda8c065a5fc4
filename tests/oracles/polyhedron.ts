import type { Moments } from '../../src/ball/mass/mass-properties.js';

/** A closed triangle mesh: x, y, z of every corner, and three corners a face, counterclockwise from outside. */
interface Polyhedron {
  readonly corners: ArrayLike<number>;
  readonly faces: ArrayLike<number>;
}

/**
 * Moments of a solid polyhedron of density one about the origin, exact but for rounding.
 *
 * The sum of the signed tetrahedra that the faces span with the origin; for one of them, with S the sum of
 * its three corners: V = det/6, ∫p = V S/4, ∫ppᵀ = V (S Sᵀ + Σ c cᵀ)/20. The same integrals as in Mirtich,
 * Fast and accurate computation of polyhedral mass properties, J. Graphics Tools 1(2), 1996.
 */
export function polyhedronMoments({ corners: p, faces }: Polyhedron): Moments {
  let mass = 0;
  const first: [number, number, number] = [0, 0, 0];
  const second = [0, 1, 2].map(() => [0, 0, 0]);
  for (let f = 0; f < faces.length; f += 3) {
    const [a, b, c] = [3 * faces[f], 3 * faces[f + 1], 3 * faces[f + 2]];
    const volume =
      (p[a] * (p[b + 1] * p[c + 2] - p[b + 2] * p[c + 1]) +
        p[a + 1] * (p[b + 2] * p[c] - p[b] * p[c + 2]) +
        p[a + 2] * (p[b] * p[c + 1] - p[b + 1] * p[c])) /
      6;
    mass += volume;
    for (let i = 0; i < 3; i++) {
      const S = p[a + i] + p[b + i] + p[c + i];
      first[i] += (volume / 4) * S;
      for (let j = 0; j < 3; j++)
        second[i][j] +=
          (volume / 20) *
          (S * (p[a + j] + p[b + j] + p[c + j]) +
            p[a + i] * p[a + j] +
            p[b + i] * p[b + j] +
            p[c + i] * p[c + j]);
    }
  }
  return { mass, first, second: second as unknown as Moments['second'] };
}
