import { driller } from '../../ball/drill/drill.js';
import { inertiaNumbers } from '../../ball/drill/drilled-numbers.js';
import { placeLayout } from '../../layout/placement.js';
import type { BallProblem } from '../../prepare/ball-problem.js';
import { toLayout } from '../../prepare/to-layout.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';

/** Numbers in which the possible cores of a ball differ once a layout is drilled: both differentials, m, core by core; empty for one core. */
export function coreNumbers(
  layout: LayoutNumbers,
  { bodies, rankingRays, pap_B, published }: BallProblem,
): readonly (readonly number[])[] {
  if (bodies.length < 2) return [];
  const { R_BC } = placeLayout(toLayout(layout, published.radius), pap_B);
  return bodies.map((body) => {
    const { differential, intermediateDifferential } = inertiaNumbers(driller(body, rankingRays)(R_BC));
    return [differential, intermediateDifferential];
  });
}
