import { FOOT, to } from '../../base/units.js';
import { visibleTurns } from '../../motion/reaction/flare.js';
import { ringsOnBall } from '../../motion/reaction/rings.js';
import type { LeanShot } from '../../motion/shot/shot.js';
import type { RingAnswer } from '../../records/answers/parts/ball-face.js';
import { arcsIn } from './face-answer.js';

/** The oil rings of a shot, each by its points' arcs over and up from the grip centre. */
export const ringsAnswer = (shot: LeanShot, radius: number): RingAnswer[] =>
  ringsOnBall(shot).map(({ turn, fromY, points_B }) => ({
    turn,
    fromFt: to(fromY, FOOT),
    points: points_B.map((u_B) => arcsIn(u_B, radius)),
  }));

/** Full turns that end in oil: their rings can be seen on the ball. */
export const ringsInOil = (shot: LeanShot): number => Math.floor(visibleTurns(shot));
