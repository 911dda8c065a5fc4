import { driller } from '../../ball/drill/drill.js';
import { inertiaNumbers } from '../../ball/drill/drilled-numbers.js';
import { excavate } from '../../ball/drill/excavation.js';
import { pluggedStretches } from '../../ball/drill/plug.js';
import { REPORT_RAYS } from '../../ball/drill/ray-rule.js';
import { uniformMoments } from '../../ball/solid/stretch.js';
import { OUNCE, POUND, to } from '../../base/units.js';
import { IDENTITY, mulVec } from '../../math/mat3.js';
import type { BallProblem } from '../../prepare/ball-problem.js';
import { inchesOf, medianNumbers } from '../../prepare/median-numbers.js';
import type { DrilledAnswer } from '../../records/answers/answer.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import { oldHoleName } from '../../records/text/old-hole-name.js';
import { markAnswer, placedOn } from './mark-answer.js';

/** What earlier drillings left in a ball, and what of it a layout's holes take; null for a new ball. */
export function redrilledAnswer(numbers: LayoutNumbers, ball: BallProblem): DrilledAnswer['redrilled'] {
  const { fillings, radius } = ball.bodies[0];
  if (!fillings) return null;
  const { plugs } = fillings;
  const placement = placedOn(ball, numbers);
  const { R_BC } = placement;
  const mark = markAnswer(placement, radius);
  const ouncesOf = (stretches: Parameters<typeof uniformMoments>[0], density: number): number =>
    to(uniformMoments(stretches, density).mass, OUNCE);
  const { stretches } = ball.reportRays;
  const undrilled = excavate([], radius, REPORT_RAYS);
  const filled = pluggedStretches(plugs, stretches)(R_BC);
  const plugged = ball.bodies.map((body) => inertiaNumbers(driller(body, undrilled)(IDENTITY)));
  return {
    oldHoles: ball.oldMouths.length,
    plugOz: plugs.reduce((sum, plug) => sum + ouncesOf(plug.stretches, plug.density), 0),
    plugTakenOz: plugs.reduce((sum, { density }, i) => sum + ouncesOf(filled[i], density), 0),
    oldMarks: ball.oldMouths.map(({ name, drilling, mouth_C }) =>
      mark(oldHoleName(name, drilling), mulVec(R_BC, mouth_C)),
    ),
    plugged: {
      massLb: to(plugged[0].mass, POUND),
      ...inchesOf(medianNumbers(plugged)),
    },
  };
}
