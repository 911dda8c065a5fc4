import { INCH, to } from '../../base/units.js';
import { arcAngle } from '../../math/sphere.js';
import { bowTie } from '../../motion/reaction/bow-tie.js';
import type { Shot } from '../../motion/shot/shot.js';
import type { BallProblem } from '../../prepare/ball-problem.js';
import type { BowTieAnswer } from '../../records/answers/answer.js';
import { arcsIn } from './face-answer.js';

/** Where the oil rings of a shot cross, the place farther toward the fingers first; null when they hardly part. */
export function bowTieAnswer(shot: Shot, { published, pap_B }: BallProblem): BowTieAnswer {
  const { radius } = published;
  const inches = (arc: number): number => to(arc * radius, INCH);
  const places = bowTie(shot)?.map(({ point_B, spread }) => ({
    ...arcsIn(point_B, radius),
    fromGripCentreIn: inches(arcAngle(point_B, [0, 0, 1])),
    fromPapIn: inches(arcAngle(point_B, pap_B)),
    spreadIn: inches(spread),
  }));
  return places ?? null;
}
