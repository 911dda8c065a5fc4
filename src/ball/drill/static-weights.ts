import { scale, type Vec3 } from '../../math/vec3.js';
import type { MassProperties } from '../mass/mass-properties.js';

/**
 * What an ounce of static weight means. `moment`: mass times offset of the centre of mass,
 * divided by the ball's radius. `halves`: the difference in weight of the two halves; a uniform half ball
 * balances at 3/8 R, so the same offset reads 8/3 times as much. No published rule was found that says which of
 * them a scale shows; flarewise uses `moment` by default, and says so.
 */
export type OunceConvention = 'moment' | 'halves';

/** Lever arm that turns a first moment into a static weight, m. */
export const staticLever = (radius: number, convention: OunceConvention): number =>
  convention === 'moment' ? radius : (3 / 8) * radius;

/** Static weights of a ball, kg: side (positive toward the PAP), finger (toward the fingers), top (toward the grip). */
export interface StaticWeights {
  readonly side: number;
  readonly finger: number;
  readonly top: number;
}

/** Static weights of a ball from its centre of mass. @param radius  the ball's, m */
export function staticWeights(
  ball: MassProperties,
  radius: number,
  convention: OunceConvention,
): StaticWeights {
  const [side, finger, top]: Vec3 = scale(ball.mass / staticLever(radius, convention), ball.p_BoBcm_B);
  return { side, finger, top };
}
