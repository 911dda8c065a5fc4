import { addMat, type Mat3, scaleMat, subMat, ZERO_MAT } from '../../math/mat3.js';
import { addScaled, scale, type Vec3, ZERO } from '../../math/vec3.js';
import { type MassProperties, pointMassInertia } from './mass-properties.js';

/** The ball that has the mean of several balls' mass, first moment and inertia about Bo; it changes smoothly wherever all of them do. */
export function meanBall(balls: readonly MassProperties[]): MassProperties {
  const share = 1 / balls.length;
  let mass = 0;
  let first_B: Vec3 = ZERO;
  let I_Bo_B: Mat3 = ZERO_MAT;
  for (const ball of balls) {
    mass += share * ball.mass;
    first_B = addScaled(first_B, share * ball.mass, ball.p_BoBcm_B);
    I_Bo_B = addMat(
      I_Bo_B,
      scaleMat(share, addMat(ball.I_Bcm_B, pointMassInertia(ball.mass, ball.p_BoBcm_B))),
    );
  }
  const p_BoBcm_B = scale(1 / mass, first_B);
  return { mass, p_BoBcm_B, I_Bcm_B: subMat(I_Bo_B, pointMassInertia(mass, p_BoBcm_B)) };
}
