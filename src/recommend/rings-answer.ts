import { visibleTurns } from '../motion/flare.js';
import { ringsOnBall } from '../motion/rings.js';
import type { Shot } from '../motion/shot.js';
import type { RingAnswer } from '../records/ball-face.js';
import { FOOT, to } from '../units.js';
import { arcsIn } from './face-answer.js';

/** The oil rings of a shot, each by its points' arcs over and up from the grip centre. */
export const ringsAnswer = (shot: Shot, radius: number): RingAnswer[] =>
  ringsOnBall(shot).map(({ turn, fromY, points_B }) => ({
    turn,
    fromFt: to(fromY, FOOT),
    points: points_B.map((u_B) => arcsIn(u_B, radius)),
  }));

/** Full turns that end in oil: their rings can be seen on the ball. */
export const ringsInOil = (shot: Shot): number => Math.floor(visibleTurns(shot));
