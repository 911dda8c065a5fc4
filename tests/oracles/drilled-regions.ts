import type { Mat3 } from '../../src/math/mat3.js';
import { mulMat } from '../../src/math/mat3.js';
import type { RandomBall } from '../support/random-balls.js';
import { affine, type Region, type Solids } from '../support/solids.js';

/**
 * A drilled ball cut into solids that share nothing, each of one density, in B: slugs and inserts, plugs of
 * earlier drillings (the later ones whole), core, filler, cover.
 */
export function drilledRegions(solids: Solids, { body, holes, before, R_BC }: RandomBall): readonly Region[] {
  const { radius, coverThickness, coverDensity, fillerDensity } = body;
  const turned = (R: Mat3) => affine(R, [0, 0, 0]);
  const whole = solids.sphere(radius);
  const regions: Region[] = [...solids.sleeves(holes, radius)];
  let claimed = solids.bores(holes, radius);
  for (const { holes: old, R_CB, density } of [...before].reverse()) {
    const filling = solids.bores(old, radius).transform(turned(mulMat(R_BC, R_CB)));
    regions.push({ solid: filling.intersect(whole).subtract(claimed), density });
    claimed = claimed.add(filling);
  }
  const inner = solids.sphere(radius - coverThickness);
  regions.push({ solid: whole.subtract(inner).subtract(claimed), density: coverDensity });
  let filler = inner.subtract(claimed);
  for (const part of body.core) {
    const solid = solids.part(part).transform(turned(R_BC));
    regions.push({ solid: solid.subtract(claimed), density: fillerDensity + part.excess });
    filler = filler.subtract(solid);
  }
  return [...regions, { solid: filler, density: fillerDensity }];
}
