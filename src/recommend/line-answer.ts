import { xToBoard } from '../motion/boards.js';
import type { LineAnswer, PathPoint } from '../records/answer.js';
import { DEGREE, to } from '../units.js';
import { isAtPocket, POCKET_BOARD } from './pocket.js';
import type { Outcome } from './simulator.js';

/** Where bowlers look when they aim, ft: about the arrows (common practice, no source). */
export const ARROWS_FT = 15;

/** The line of a nominal shot, as a bowler would be told it. */
export const lineAnswer = ({ launch, shot, reaction }: Outcome, path: readonly PathPoint[]): LineAnswer => ({
  laydownBoard: xToBoard(launch.x),
  launchAngleDeg: to(launch.angle, DEGREE),
  arrowsBoard: path.find(({ distanceFt }) => distanceFt === ARROWS_FT)?.board ?? null,
  breakpointBoard: xToBoard(reaction.breakpointX),
  pocketBoard: POCKET_BOARD,
  reachesPocket: isAtPocket(shot, reaction.pinsX),
});
