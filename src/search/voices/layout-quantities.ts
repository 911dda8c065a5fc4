import { driller } from '../../ball/drill/drill.js';
import { inertiaNumbers } from '../../ball/drill/drilled-numbers.js';
import { from, INCH, to } from '../../base/units.js';
import { placeLayout } from '../../layout/placement.js';
import { acos } from '../../math/atan.js';
import { dot, ZERO } from '../../math/vec3.js';
import type { BallProblem } from '../../prepare/ball-problem.js';
import { MIDDLE_LAYOUT } from '../../prepare/middle-layout.js';
import { toLayout } from '../../prepare/to-layout.js';
import { LEAST_MASS_BIAS_IN } from '../../records/schemas/core-families.js';
import type { BeliefQuantity } from '../../records/shared/beliefs.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import { applyFit, layoutBasis, layoutFit } from '../../simulate/layout-basis.js';
import type { ShotProblem } from '../../simulate/shot-problem.js';

/** The quantities that beliefs depend on, for one layout on one ball. */
export type LayoutQuantities = Readonly<Record<BeliefQuantity, number>>;

/** Whether practice considers where a ball's mark lies: one without a mass bias has no such mark. */
export const goesByMark = ({ published }: Pick<BallProblem, 'published'>): boolean =>
  published.intermediateDifferential > from(LEAST_MASS_BIAS_IN, INCH);

/** Number of layouts that are drilled, to fit the drilled balls of all others: a little more than twice the size of the basis. */
const SAMPLE = 60;

/** Mass and the six numbers of an inertia tensor. */
const NUMBERS = 7;

/**
 * Prepares the quantities that beliefs depend on, for any of thousands of layouts of one ball, without drilling each.
 *
 * The most typical core is drilled on a sample of layouts; mass and inertia are smooth in the directions a layout sets
 * (`layoutBasis`) and are fitted over them.
 *
 * @param layouts  all that may be asked about, near enough
 */
export function layoutQuantities(
  { ball, grit }: Pick<ShotProblem, 'ball' | 'grit'>,
  layouts: readonly LayoutNumbers[],
): (layout: LayoutNumbers) => LayoutQuantities {
  const { radius } = ball.published;
  const step = Math.max(1, layouts.length / SAMPLE);
  const sample = [
    MIDDLE_LAYOUT,
    ...Array.from({ length: Math.min(SAMPLE, layouts.length) }, (_, i) => layouts[Math.floor(i * step)]),
  ].map((layout) => toLayout(layout, radius));
  const drill = driller(ball.bodies[0], ball.rankingRays);
  const drilled = sample.flatMap((layout) => {
    const { mass, I_Bcm_B: I } = drill(placeLayout(layout, ball.pap_B).R_BC);
    return [mass, ...I[0], I[1][1], I[1][2], I[2][2]];
  });
  const weights = layoutFit(layoutBasis(sample, ball.pap_B))(Float64Array.from(drilled), NUMBERS);
  const hasMark = goesByMark(ball);
  const numbers = new Float64Array(NUMBERS);
  return (layout) => {
    const marked = toLayout(layout, radius);
    applyFit(numbers, 0, layoutBasis([marked], ball.pap_B), 0, weights, NUMBERS);
    const [mass, xx, xy, xz, yy, yz, zz] = numbers;
    const rg = inertiaNumbers({
      mass,
      p_BoBcm_B: ZERO,
      I_Bcm_B: [
        [xx, xy, xz],
        [xy, yy, yz],
        [xz, yz, zz],
      ],
    });
    const { marker_B } = placeLayout(marked, ball.pap_B);
    return {
      drillingAngleDeg: layout.drillingAngleDeg,
      valAngleDeg: layout.valAngleDeg,
      pinToPapIn: layout.pinToPapIn,
      // the same for every layout where practice does not consider it
      markToPapIn: hasMark ? to(radius * acos(Math.min(1, Math.abs(dot(marker_B, ball.pap_B)))), INCH) : 0,
      differentialIn: to(rg.differential, INCH),
      intermediateDifferentialIn: to(rg.intermediateDifferential, INCH),
      rgIn: to(rg.lowRg, INCH),
      finishGrit: grit,
    };
  };
}
