import { alongAxes, symmetricEigen } from '../../math/eigen3.js';
import { type Mat3, transpose } from '../../math/mat3.js';
import type { Vec3 } from '../../math/vec3.js';
import type { RollingBody } from './body.js';

/**
 * A ball in its own principal frame P: origin Bo, axes along the principal axes of inertia about Bcm.
 *
 * In P the inertia is three numbers, which makes the equations of motion cheap. Nothing else depends on the choice of P.
 */
export interface PrincipalBody {
  readonly mass: number;
  readonly radius: number;
  /** Principal moments about Bcm, kg·m², ascending. */
  readonly J: Vec3;
  readonly p_BoBcm_P: Vec3;
  readonly R_BP: Mat3;
}

export function principalBody({ mass, radius, p_BoBcm_B, I_Bcm_B }: RollingBody): PrincipalBody {
  const eigen = symmetricEigen(I_Bcm_B);
  return {
    mass,
    radius,
    J: eigen.values,
    p_BoBcm_P: alongAxes(eigen, p_BoBcm_B),
    R_BP: transpose(eigen.axes), // the axes, as columns
  };
}
