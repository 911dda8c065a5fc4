import { ARROWS_FT } from '../../base/constants.js';
import { toDigits } from '../../base/decimals.js';
import { DEGREE, to } from '../../base/units.js';
import { xToBoard } from '../../motion/lane/boards.js';
import type { Launch } from '../../motion/shot/release.js';
import type { LineAnswer, PathPoint } from '../../records/answers/answer.js';
import { POCKET_BOARD } from '../../simulate/pocket.js';
import type { Outcome } from '../../simulate/simulator.js';

/** A ball laid down on board 14 is said to be laid down on 14, and not on what is left of it after a way to metres and back. */
export const laydownBoardOf = ({ x }: Launch): number => toDigits(xToBoard(x), BOARD_DIGITS);

const BOARD_DIGITS = 9;

/** The line of a nominal shot, in the terms a bowler uses. */
export const lineAnswer = (
  { launch, reaction, reachesPocket }: Outcome,
  path: readonly PathPoint[],
): LineAnswer => ({
  laydownBoard: laydownBoardOf(launch),
  launchAngleDeg: to(launch.angle, DEGREE),
  arrowsBoard: path.find(({ distanceFt }) => distanceFt === ARROWS_FT)?.board ?? null,
  breakpointBoard: xToBoard(reaction.breakpointX),
  pocketBoard: POCKET_BOARD,
  reachesPocket,
});
