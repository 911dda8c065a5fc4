import type { DenseSolid } from '../../ball/core/own-body.js';
import type { UnitShape } from '../../ball/solid/part.js';
import { from, GRAM_PER_CC } from '../../base/units.js';
import { diagonal, type Mat3, mulMat, mulVec } from '../../math/mat3.js';
import { scale, type Vec3, ZERO } from '../../math/vec3.js';
import type { Core, CorePart } from '../../records/schemas/core.js';
import { LENGTH, poseOf } from './core-pose.js';

type SolidPart = Exclude<CorePart, { shape: 'mesh' }>;

/** A solid of a core file in C, at its density. */
export function placeSolid(part: SolidPart, core: Core, R_CF: Mat3): DenseSolid {
  const { shape, half } = unitShape(part);
  const k = LENGTH[core.unit];
  return {
    shape,
    A: mulMat(mulMat(R_CF, poseOf(part)), diagonal(scale(k, half))),
    c: mulVec(R_CF, scale(k, part.centre ?? ZERO)),
    density: from(part.densityGcc, GRAM_PER_CC),
  };
}

/** Which unit shape a solid is, and the half lengths that stretch it, in the file's unit. */
function unitShape(part: SolidPart): { readonly shape: UnitShape; readonly half: Vec3 } {
  switch (part.shape) {
    case 'ellipsoid':
      return { shape: { kind: 'ball' }, half: part.radii };
    case 'cylinder':
      return { shape: { kind: 'cylinder' }, half: [part.radius, part.radius, part.height / 2] };
    case 'cone': {
      const { bottomRadius: r, topRadius, height } = part;
      return { shape: { kind: 'cone', top: topRadius / r }, half: [r, r, height / 2] };
    }
    case 'capsule': {
      const { radius: r, height } = part;
      return { shape: { kind: 'capsule', half: height / (2 * r) - 1 }, half: [r, r, r] };
    }
    case 'box':
      return { shape: { kind: 'box' }, half: scale(0.5, part.sides) };
  }
}
