import { bodyMoments } from '../../ball/drill/ball-body.js';
import { staticWeights } from '../../ball/drill/static-weights.js';
import { fromMoments } from '../../ball/mass/mass-properties.js';
import { fromKeys } from '../../base/from-keys.js';
import { OUNCE, to } from '../../base/units.js';
import { placeLayout } from '../../layout/placement.js';
import { mulVec, rotateTensor } from '../../math/mat3.js';
import type { BallProblem } from '../../prepare/ball-problem.js';
import { toLayout } from '../../prepare/to-layout.js';
import type { DrilledNumbersAnswer } from '../../records/answers/answer.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';

/** Static weights of the ball as made, turned to the grip as a layout turns it, by its most typical core. */
export function undrilledStatics(
  layout: LayoutNumbers,
  ball: Pick<BallProblem, 'bodies' | 'pap_B' | 'published' | 'ounce'>,
): DrilledNumbersAnswer['staticOz'] {
  const { radius } = ball.published;
  const { R_BC } = placeLayout(toLayout(layout, radius), ball.pap_B);
  const made = fromMoments(bodyMoments(ball.bodies[0])); // in C
  const turned = {
    mass: made.mass,
    p_BoBcm_B: mulVec(R_BC, made.p_BoBcm_B),
    I_Bcm_B: rotateTensor(R_BC, made.I_Bcm_B),
  };
  const statics = staticWeights(turned, radius, ball.ounce);
  return fromKeys(['top', 'side', 'finger'], (side) => to(statics[side], OUNCE));
}
