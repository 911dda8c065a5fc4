import { ARROWS_FT, BOARD } from '../base/constants.js';
import { DEGREE, FOOT, from, to } from '../base/units.js';
import { xToBoard } from '../motion/lane/boards.js';
import type { Reaction } from '../motion/reaction/reaction.js';
import type { LeanShot } from '../motion/shot/shot.js';
import type { Play } from './shot-problem.js';

/** A shot with its numbers. */
export interface Played {
  readonly shot: LeanShot;
  readonly reaction: Reaction;
}

/** The lane's edge, on a scale where each board's number is at its middle. */
const EDGE_BOARD = 0.5;

/** Distance that a line keeps from the gutter at its widest point, in standard deviations of the bowler's direction (a choice of this project). */
const KEPT_CLEAR = 2;

/** Tolerance of that distance, boards. */
const CLEAR_TOLERANCE = 1;

/**
 * Penalty for a shot that comes nearer to its gutter than bowlers allow, given the scatter of their direction: the square of the
 * missing distance in tolerances; 0 if none is missing.
 */
export function tooWide({ reaction: { breakpointX, breakpointY } }: Played, { aimScatter }: Play): number {
  const clear = xToBoard(breakpointX) - EDGE_BOARD;
  const wanted = (KEPT_CLEAR * aimScatter * breakpointY) / BOARD;
  return (Math.max(0, wanted - clear) / CLEAR_TOLERANCE) ** 2;
}

/**
 * How far a shot is from the lines that bowlers play on such a pattern; 0 for a usual line.
 *
 * Sum of squares over the visible properties of a line (laydown, board at the arrows, direction, breakpoint, entry angle): for each the
 * distance outside its usual range, in tolerances. The penalty for coming too near to the gutter is added. The range of the breakpoint
 * is a single board, so there is one best line.
 */
export function offUsual(played: Played, play: Play): number {
  const { shot, reaction } = played;
  const { usual, breakpointBoard } = play;
  const { breakpointX, entryAngle } = reaction;
  const { laydownBoard, arrowsBeyondBreakpoint, launchDeg, entryDeg } = usual;
  const arrows = arrowsBoard(shot) - breakpointBoard;
  return (
    ((xToBoard(breakpointX) - breakpointBoard) / usual.breakpointBoard.tolerance) ** 2 +
    outside(xToBoard(shot.launch.x), laydownBoard) ** 2 +
    outside(arrows, arrowsBeyondBreakpoint) ** 2 +
    outside(to(shot.launch.angle, DEGREE), launchDeg) ** 2 +
    outside(to(entryAngle, DEGREE), entryDeg) ** 2 +
    tooWide(played, play)
  );
}

/** How far a value lies outside a range, in tolerances; 0 inside. */
const outside = (
  value: number,
  range: { readonly least: number; readonly most: number; readonly tolerance: number },
): number => Math.max(0, range.least - value, value - range.most) / range.tolerance;

/** Board that a shot crosses at the arrows; NaN where it never gets there. */
export const arrowsBoard = (shot: LeanShot): number => boardCrossed(shot, from(ARROWS_FT, FOOT));

/** Board that a shot crosses at a distance from the foul line, m, interpolated between samples; NaN where it never gets there. */
export function boardCrossed({ x, y }: LeanShot, distance: number): number {
  const i = y.findIndex((each) => each >= distance);
  const share = (distance - y[i - 1]) / (y[i] - y[i - 1]);
  return xToBoard(x[i - 1] + share * (x[i] - x[i - 1]));
}
