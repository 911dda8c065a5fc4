import type { Layout } from '../layout/layout.js';
import type { Vec3 } from '../math/vec3.js';
import { applyFit, BASIS_SIZE, layoutBasis, layoutFit } from './layout-basis.js';

/** A layout and the launch angle of its own line, rad. */
export interface KnownAngle {
  readonly layout: Layout;
  readonly angle: number;
}

/**
 * Fits the launch angles of layouts' own lines over the layout's basis.
 *
 * @returns rows of a basis ↦ launch angles, rad
 */
export function fitAngles(known: readonly KnownAngle[], pap_B: Vec3): (basis: Float64Array) => Float64Array {
  const layouts = known.map(({ layout }) => layout);
  const weights = layoutFit(layoutBasis(layouts, pap_B))(
    Float64Array.from(known, ({ angle }) => angle),
    1,
  );
  return (basis) => {
    const angles = new Float64Array(basis.length / BASIS_SIZE);
    for (let i = 0; i < angles.length; i++) applyFit(angles, i, basis, i, weights, 1);
    return angles;
  };
}
