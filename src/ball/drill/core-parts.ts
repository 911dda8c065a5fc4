import { inverse, type Mat3, mulMat, mulVec, transpose } from '../../math/mat3.js';
import { scale, type Vec3 } from '../../math/vec3.js';
import type { Moments } from '../mass/mass-properties.js';
import { MomentSum } from '../mass/moment-sum.js';
import type { Part, UnitShape } from '../solid/part.js';
import { crossMapped, type Interval, unitRay } from '../solid/ray-interval.js';
import type { Stretch } from '../solid/stretch.js';

/** Moments of the excess over the filler that stretches in B hold of a core turned by R_BC; about Bo, in B. */
export type CoreAlong = (R_BC: Mat3, stretches: readonly Stretch[]) => Moments;

/**
 * Prepares parts that do not overlap: along a line each adds what it holds, independently of the others.
 *
 * The hot path of a ranking: a turn of the core costs one product of matrices for each part, and after that nothing is allocated.
 */
export function partsAlong(core: readonly Part[]): CoreAlong {
  const regions = core.map((part): Region => {
    const invA = inverse(part.A);
    return { shape: part.shape, invA, offset: scale(-1, mulVec(invA, part.c)), density: part.excess };
  });
  return (R_BC, stretches) => {
    const R_CB = transpose(R_BC);
    const maps = regions.map(({ invA }) => mulMat(invA, R_CB));
    return regionsAlong(regions, maps, stretches);
  };
}

/** A part of the core, seen from its shape's unit frame: q = invA p_C + offset. */
interface Region {
  readonly shape: UnitShape;
  readonly invA: Mat3;
  readonly offset: Vec3;
  readonly density: number; // kg/m³ above the filler
}

/** @param maps  from B to each region's unit frame, without its offset */
function regionsAlong(
  regions: readonly Region[],
  maps: readonly Mat3[],
  stretches: readonly Stretch[],
): Moments {
  const sum = new MomentSum();
  const hit: Interval = { enter: 0, leave: 0 };
  const lent = unitRay();
  for (const { a, d, area, s, e } of stretches) {
    let m0 = 0;
    let m1 = 0;
    let m2 = 0;
    for (let i = 0; i < regions.length; i++) {
      const { shape, offset, density } = regions[i];
      crossMapped(hit, lent, shape, maps[i], offset, a, d);
      const enter = Math.max(s, hit.enter);
      const leave = Math.min(e, hit.leave);
      if (leave <= enter) continue;
      const line = area * density;
      m0 += line * (leave - enter);
      m1 += (line * (leave * leave - enter * enter)) / 2;
      m2 += (line * (leave * leave * leave - enter * enter * enter)) / 3;
    }
    if (m0 !== 0) sum.addAlong(a, d, m0, m1, m2);
  }
  return sum.moments();
}
