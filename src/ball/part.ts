import { addMat, determinant, type Mat3, mulMat, mulVec, outer, scaleMat, transpose } from '../mat3.js';
import { add, scale, type Vec3 } from '../vec3.js';
import type { Moments } from './mass-properties.js';

/**
 * The shapes a core is made of, each in its own unit frame:
 * `ball` |q| ≤ 1; `cylinder` x²+y² ≤ 1, |z| ≤ 1; `box` |x|,|y|,|z| ≤ 1;
 * `cone` |z| ≤ 1, radius 1 at z = −1 falling linearly to `top` at z = 1.
 */
export type UnitShape =
  | { readonly kind: 'ball' }
  | { readonly kind: 'cylinder' }
  | { readonly kind: 'box' }
  | { readonly kind: 'cone'; readonly top: number };

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
        xx: (Math.PI / 2) * (m ** 4 + 2 * m * m * s * s + s ** 4 / 5),
        zz: 2 * Math.PI * ((m * m) / 3 + (s * s) / 5),
      };
    }
  }
}

/** Moments of a part's excess density about the origin of its frame (kg, kg·m, kg·m²), in closed form. */
export function partMoments(part: Part): Moments {
  const unit = unitMoments(part.shape);
  const k = part.excess * Math.abs(determinant(part.A));
  const Az = scale(unit.z, mulVec(part.A, [0, 0, 1]));
  const S: Mat3 = [
    [unit.xx, 0, 0],
    [0, unit.xx, 0],
    [0, 0, unit.zz],
  ];
  const mapped = mulMat(mulMat(part.A, S), transpose(part.A));
  const crossed = addMat(outer(Az, part.c), outer(part.c, Az));
  return {
    mass: k * unit.volume,
    first: scale(k, add(Az, scale(unit.volume, part.c))),
    second: scaleMat(k, addMat(mapped, addMat(crossed, scaleMat(unit.volume, outer(part.c, part.c))))),
  };
}

/** The part stretched by `s` along the axes of its frame, then moved by `shift` (m). */
export const stretchPart = (part: Part, s: Vec3, shift: Vec3): Part => ({
  ...part,
  A: [scale(s[0], part.A[0]), scale(s[1], part.A[1]), scale(s[2], part.A[2])],
  c: [s[0] * part.c[0] + shift[0], s[1] * part.c[1] + shift[1], s[2] * part.c[2] + shift[2]],
});

/**
 * Greatest distance (m) from the origin to any point of the part: exact for boxes, else over points 15° apart
 * on its outline, short by less than the gap that `solveCore` keeps to the cover.
 */
export function partReach(part: Part): number {
  const distance = (q: Vec3): number => Math.hypot(...add(mulVec(part.A, q), part.c));
  let reach = 0;
  const STEPS = 24;
  for (let i = 0; i < STEPS; i++) {
    const a = (2 * Math.PI * i) / STEPS;
    if (part.shape.kind === 'box') {
      reach = Math.max(reach, distance([i & 1 ? 1 : -1, i & 2 ? 1 : -1, i & 4 ? 1 : -1]));
    } else if (part.shape.kind === 'ball') {
      for (let j = 0; j <= STEPS / 2; j++) {
        const b = (Math.PI * j) / (STEPS / 2);
        reach = Math.max(
          reach,
          distance([Math.sin(b) * Math.cos(a), Math.sin(b) * Math.sin(a), Math.cos(b)]),
        );
      }
    } else {
      const top = part.shape.kind === 'cone' ? part.shape.top : 1;
      reach = Math.max(
        reach,
        distance([Math.cos(a), Math.sin(a), -1]),
        distance([top * Math.cos(a), top * Math.sin(a), 1]),
      );
    }
  }
  return reach;
}
