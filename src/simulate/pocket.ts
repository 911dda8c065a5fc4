import { boardToX } from '../motion/lane/boards.js';
import type { Shot } from '../motion/shot/shot.js';

/** Board of the pocket, counted from the bowler's side (entry at 17 to 18: secondary, USBC pin-carry work). */
export const POCKET_BOARD = 17.5;

/** Boards at the pins that still count as the pocket, between a thin and a high hit (common practice, no source). */
export const THIN_BOARD = 16.5;
export const HIGH_BOARD = 18.5;

/** Distance of a ball at the pins outside the pocket's nearer edge, m; negative inside. @param pinsX  where it ended, m in W */
export const pastPocket = (pinsX: number): number =>
  Math.max(boardToX(HIGH_BOARD) - pinsX, pinsX - boardToX(THIN_BOARD));

/** Whether a shot reached the pocket. @param pinsX  where it ended, m in W */
export const isAtPocket = (outcome: Shot['outcome'], pinsX: number): boolean =>
  outcome === 'pins' && pastPocket(pinsX) <= 0;
