import { BOARD, LANE_WIDTH } from '../../base/constants.js';

/**
 * Boards count from the right edge for a right-hander, whose side of the lane motion always plays: board b
 * spans b − 1 to b boards from the edge, so its centre lies at x = LANE_WIDTH/2 − (b − ½) BOARD.
 */
export const boardToX = (board: number): number => LANE_WIDTH / 2 - (board - 0.5) * BOARD;

/** Inverse of `boardToX`; x in m from the lane's centre line, positive to the right. */
export const xToBoard = (x: number): number => (LANE_WIDTH / 2 - x) / BOARD + 0.5;
