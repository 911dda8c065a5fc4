import { ARROWS_FT } from '../../base/constants.js';
import { DEGREE, to } from '../../base/units.js';
import { xToBoard } from '../../motion/lane/boards.js';
import type { LineAnswer, PathPoint } from '../../records/answers/answer.js';
import { POCKET_BOARD } from '../../simulate/pocket.js';
import type { Outcome } from '../../simulate/simulator.js';

/** The line of a nominal shot, in the terms a bowler uses. */
export const lineAnswer = (
  { launch, reaction, reachesPocket }: Outcome,
  path: readonly PathPoint[],
): LineAnswer => ({
  laydownBoard: xToBoard(launch.x),
  launchAngleDeg: to(launch.angle, DEGREE),
  arrowsBoard: path.find(({ distanceFt }) => distanceFt === ARROWS_FT)?.board ?? null,
  breakpointBoard: xToBoard(reaction.breakpointX),
  pocketBoard: POCKET_BOARD,
  reachesPocket,
});
