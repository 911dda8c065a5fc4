import { arcAngle } from '../layout/sphere.js';
import { bowTie } from '../motion/bow-tie.js';
import type { Shot } from '../motion/shot.js';
import type { BowTieAnswer } from '../records/answer.js';
import { INCH, to } from '../units.js';
import type { BallProblem } from './ball-problem.js';
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
