import type { MassProperties } from '../../src/ball/mass/mass-properties.js';
import { from, INCH, OUNCE } from '../../src/base/units.js';
import { symmetricEigen } from '../../src/math/eigen3.js';
import { addMat, outer, scaleMat } from '../../src/math/mat3.js';
import { rotateAbout, ZERO } from '../../src/math/vec3.js';
import { USUAL_CIRCUMFERENCE_IN } from '../../src/records/schemas/ball.js';

/* Changes to a drilled ball that no driller could make, each of one thing alone. */

/** Of a ball of the usual size, m. */
export const RADIUS = from(USUAL_CIRCUMFERENCE_IN, INCH) / (2 * Math.PI);

/** The same ball with this side weight (oz as moment over radius, positive toward the PAP). */
export const withSideWeight =
  (sideOz: number) =>
  (ball: MassProperties): MassProperties => {
    const [, y, z] = ball.p_BoBcm_B;
    return { ...ball, p_BoBcm_B: [(from(sideOz, OUNCE) * RADIUS) / ball.mass, y, z] };
  };

/** The same ball with its centre of mass at its centre. */
export const centred = (ball: MassProperties): MassProperties => ({ ...ball, p_BoBcm_B: ZERO });

/**
 * The same ball with this intermediate differential (in): low and high RG and the low axis are kept, the
 * other two axes are turned about it by `turn` (rad).
 */
export const withMassBias =
  (biasIn: number, turn = 0) =>
  (ball: MassProperties): MassProperties => {
    const { values, axes } = symmetricEigen(ball.I_Bcm_B);
    const middleRg = Math.sqrt(values[2] / ball.mass) - from(biasIn, INCH);
    const moments = [values[0], ball.mass * middleRg ** 2, values[2]];
    const parts = axes.map((axis, i) => {
      const turned = rotateAbout(axis, axes[0], turn);
      return scaleMat(moments[i], outer(turned, turned));
    });
    return { ...ball, I_Bcm_B: parts.reduce((sum, part) => addMat(sum, part)) };
  };
