import { determinant, type Mat3, mulMat, mulVec } from '../../math/mat3.js';
import { cube } from '../../math/power.js';
import { add, scale, type Vec3 } from '../../math/vec3.js';
import type { Moments } from '../mass/mass-properties.js';

/**
 * The shapes a core is made of, each in its own unit frame:
 * `ball` |q| ≤ 1; `cylinder` x²+y² ≤ 1, |z| ≤ 1; `box` |x|,|y|,|z| ≤ 1;
 * `cone` |z| ≤ 1, radius 1 at z = −1 falling linearly to `top` at z = 1;
 * `capsule` all points within 1 of the stretch |z| ≤ `half` of the axis.
 */
export type UnitShape =
  | { readonly kind: 'ball' }
  | { readonly kind: 'cylinder' }
  | { readonly kind: 'box' }
  | { readonly kind: 'cone'; readonly top: number }
  | { readonly kind: 'capsule'; readonly half: number };

/**
 * A solid of a core: a unit shape under the affine map p = A q + c.
 *
 * Affine maps keep a quadric a quadric, so scaling a whole core by axes leaves every ray intersection
 * exact and every moment in closed form.
 */
export interface Part {
  readonly shape: UnitShape;
  readonly A: Mat3; // m
  readonly c: Vec3; // m
  /** Density above the filler it replaces, kg/m³. Parts of a core do not overlap. */
  readonly excess: number;
}

/** Moments of a unit shape of density one: volume, first moments (z only) and second moments (diagonal). */
function unitMoments(shape: UnitShape): { volume: number; z: number; xx: number; zz: number } {
  switch (shape.kind) {
    case 'ball':
      return { volume: (4 / 3) * Math.PI, z: 0, xx: (4 * Math.PI) / 15, zz: (4 * Math.PI) / 15 };
    case 'cylinder':
      return { volume: 2 * Math.PI, z: 0, xx: Math.PI / 2, zz: (2 * Math.PI) / 3 };
    case 'box':
      return { volume: 8, z: 0, xx: 8 / 3, zz: 8 / 3 };
    case 'cone': {
      // r(z) = m + s z with m = (1+t)/2, s = (t−1)/2; ∫ πr², ∫ πr² z, ∫ πr⁴/4, ∫ πr² z² over |z| ≤ 1
      const m = (1 + shape.top) / 2;
      const s = (shape.top - 1) / 2;
      return {
        volume: 2 * Math.PI * (m * m + (s * s) / 3),
        z: (4 / 3) * Math.PI * m * s,
        xx: (Math.PI / 2) * (m * m * m * m + 2 * m * m * s * s + (s * s * s * s) / 5),
        zz: 2 * Math.PI * ((m * m) / 3 + (s * s) / 5),
      };
    }
    case 'capsule': {
      // a cylinder and the two halves of a ball, whose centres of mass lie 3/8 beyond its ends
      const h = shape.half;
      return {
        volume: 2 * Math.PI * h + (4 / 3) * Math.PI,
        z: 0,
        xx: (Math.PI * h) / 2 + (4 * Math.PI) / 15,
        zz: Math.PI * ((2 / 3) * cube(h) + (4 / 3) * h * h + h + 4 / 15),
      };
    }
  }
}

/** Moments of a part's excess density about the origin of its frame (kg, kg·m, kg·m²), in closed form. */
export function partMoments({ shape, A, c, excess }: Part): Moments {
  const { volume, z, xx, zz } = unitMoments(shape);
  const k = excess * Math.abs(determinant(A));
  const Az: Vec3 = [z * A[0][2], z * A[1][2], z * A[2][2]];
  const second = (i: 0 | 1 | 2, j: 0 | 1 | 2): number =>
    k *
    (xx * (A[i][0] * A[j][0] + A[i][1] * A[j][1]) +
      zz * A[i][2] * A[j][2] +
      (Az[i] * c[j] + c[i] * Az[j]) +
      volume * c[i] * c[j]);
  const row = (i: 0 | 1 | 2): Vec3 => [second(i, 0), second(i, 1), second(i, 2)];
  return {
    mass: k * volume,
    first: scale(k, add(Az, scale(volume, c))),
    second: [row(0), row(1), row(2)],
  };
}

/** The part stretched by `s` along the axes of its frame, then moved by `shift` (m). */
export const stretchPart = (part: Part, s: Vec3, shift: Vec3): Part => ({
  ...part,
  A: [scale(s[0], part.A[0]), scale(s[1], part.A[1]), scale(s[2], part.A[2])],
  c: [s[0] * part.c[0] + shift[0], s[1] * part.c[1] + shift[1], s[2] * part.c[2] + shift[2]],
});

/** The part turned about the origin of its frame. */
export const turnPart = (part: Part, R: Mat3): Part => ({
  ...part,
  A: mulMat(R, part.A),
  c: mulVec(R, part.c),
});
