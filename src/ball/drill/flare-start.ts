import { symmetricEigen } from '../../math/eigen3.js';
import { inverse, mulVec } from '../../math/mat3.js';
import { cross, norm, type Vec3 } from '../../math/vec3.js';
import type { MassProperties } from '../mass/mass-properties.js';

/** How a drilled ball's core starts to move the axis over the ball, before the lane does anything. */
interface FlareStart {
  /** Arc by which the axis moves in the first turn, and by which oil rings lie apart where they are widest, rad. */
  readonly perTurn: number;
  /** Share of the most that this ball could do about another axis, 0 to 1. */
  readonly share: number;
}

/**
 * The first turn of a free body about an axis through its centre of mass: by Euler's equations (Landau & Lifshitz, Mechanics, §36) the axis n
 * moves by 2π |J⁻¹(J n × n)|. The most, π (high − low)/middle, is reached halfway between low-RG and high-RG axis, so
 * the total differential sets it; how much of it is reached depends on where the layout puts the axis. On a body of revolution the share is
 * sin 2θ, θ the angle of axis and pin.
 *
 * @param axis_B  unit vector: the PAP
 */
export function flareStart({ I_Bcm_B: J }: MassProperties, axis_B: Vec3): FlareStart {
  const [low, middle, high] = symmetricEigen(J).values;
  const perTurn = 2 * Math.PI * norm(mulVec(inverse(J), cross(mulVec(J, axis_B), axis_B)));
  const most = (Math.PI * (high - low)) / middle;
  return { perTurn, share: most > 0 ? perTurn / most : 0 };
}
