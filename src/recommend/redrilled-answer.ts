import { driller } from '../ball/drill.js';
import { inertiaNumbers } from '../ball/drilled-numbers.js';
import { excavate } from '../ball/excavation.js';
import { pluggedStretches } from '../ball/plug.js';
import { REPORT_RAYS } from '../ball/ray-rule.js';
import { uniformMoments } from '../ball/stretch.js';
import { placeLayout } from '../layout/placement.js';
import { IDENTITY, mulVec } from '../mat3.js';
import type { DrilledAnswer } from '../records/answer.js';
import type { LayoutNumbers } from '../records/layout-text.js';
import { INCH, OUNCE, POUND, to } from '../units.js';
import type { BallProblem } from './ball-problem.js';
import { markAnswer } from './mark-answer.js';
import { toLayout } from './to-layout.js';

/** What earlier drillings left in a ball, and what of it a layout's holes take; null for a new ball. */
export function redrilledAnswer(numbers: LayoutNumbers, ball: BallProblem): DrilledAnswer['redrilled'] {
  const [body] = ball.bodies;
  const { plugs = [], radius } = body;
  if (plugs.length === 0) return null;
  const placement = placeLayout(toLayout(numbers, radius), ball.pap_B, ball.pinToMarker);
  const { R_BC } = placement;
  const mark = markAnswer(placement, radius);
  const ouncesOf = (stretches: Parameters<typeof uniformMoments>[0], density: number): number =>
    to(uniformMoments(stretches, density).mass, OUNCE);
  const { stretches } = ball.reportRays;
  const plugged = inertiaNumbers(driller(body, excavate([], radius, REPORT_RAYS))(IDENTITY));
  return {
    oldHoles: ball.oldMouths.length,
    plugOz: plugs.reduce((sum, plug) => sum + ouncesOf(plug.stretches, plug.density), 0),
    plugTakenOz: plugs.reduce(
      (sum, { density }, i) => sum + ouncesOf(pluggedStretches(plugs, i, stretches, R_BC), density),
      0,
    ),
    oldMarks: ball.oldMouths.map(({ name, drilling, mouth_C }) =>
      mark(
        plugs.length > 1 ? `old ${name} hole of drilling ${drilling}` : `old ${name} hole`,
        mulVec(R_BC, mouth_C),
      ),
    ),
    plugged: {
      massLb: to(plugged.mass, POUND),
      rgIn: to(plugged.lowRg, INCH),
      differentialIn: to(plugged.differential, INCH),
      intermediateDifferentialIn: to(plugged.intermediateDifferential, INCH),
    },
  };
}
