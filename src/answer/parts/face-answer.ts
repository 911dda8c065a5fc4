import { from, INCH, to } from '../../base/units.js';
import { holeName, mouthRadius } from '../../layout/hole.js';
import { ballPoint, overAndUp } from '../../math/ball-point.js';
import { mulVec } from '../../math/mat3.js';
import type { Vec3 } from '../../math/vec3.js';
import type { BallProblem } from '../../prepare/ball-problem.js';
import type { PsaAnswer } from '../../records/answers/answer.js';
import type { BallFace } from '../../records/answers/parts/ball-face.js';
import type { Bowler } from '../../records/schemas/bowler.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import { placedOn } from './mark-answer.js';

/** Where marks and holes lie on a ball with this layout, as it is drawn. */
export function faceAnswer(
  numbers: LayoutNumbers,
  psa: PsaAnswer,
  hand: Bowler['hand'],
  ball: BallProblem,
): BallFace {
  const { radius } = ball.published;
  const { pap_B, pin_B, marker_B, R_BC } = placedOn(ball, numbers);
  const arc = (inches: number): number => from(inches, INCH) / radius;
  return {
    hand,
    radiusIn: to(radius, INCH),
    pap: [...pap_B],
    pin: [...pin_B],
    marker: [...marker_B],
    markerName: ball.marker ?? 'CG mark',
    psa: psa.certain ? [...ballPoint(arc(psa.overIn), arc(psa.upIn))] : null,
    oldHoles: ball.oldMouths.map(({ name, mouth_C, radius: mouth }) => ({
      name,
      at: [...mulVec(R_BC, mouth_C)],
      boreIn: to(2 * mouth, INCH),
    })),
    holes: ball.holes.map((hole) => ({
      name: holeName(hole),
      at: [...hole.mouth_B],
      openIn: to(2 * hole.open.radius, INCH),
      boreIn: to(2 * mouthRadius(hole), INCH),
    })),
  };
}

/** A point of the ball by its arcs over and up from the grip centre, in. */
export const arcsIn = (u_B: Vec3, radius: number): { overIn: number; upIn: number } => {
  const { over, up } = overAndUp(u_B);
  return { overIn: to(over * radius, INCH), upIn: to(up * radius, INCH) };
};
