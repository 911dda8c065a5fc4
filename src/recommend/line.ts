import type { Layout } from '../layout/layout.js';
import { aimAt } from '../motion/aim.js';
import { boardToX, xToBoard } from '../motion/boards.js';
import { reactionNumbers } from '../motion/reaction.js';
import type { Launch } from '../motion/release.js';
import { DEGREE, FOOT, to } from '../units.js';
import type { ShotProblem } from './shot-problem.js';
import { simulator } from './simulator.js';
import { NOMINAL_WORLD } from './world.js';

/** The line a bowler plays: where the ball is laid down, and in which direction. */
export interface Line {
  readonly launch: Launch;
  readonly laydownBoard: number;
  readonly reachesPocket: boolean;
}

/** Board of the pocket, counted from the bowler's side (entry at 17 to 18: secondary, USBC pin-carry work). */
export const POCKET_BOARD = 17.5;

/** Boards tried for the laydown when the bowler names none. */
const LAYDOWN_BOARDS = Array.from({ length: 16 }, (_, i) => 8 + 2 * i);

/**
 * Finds the line on which the ball with a given layout reaches the pocket.
 *
 * Of all laydown boards from which a launch direction exists, it takes the one whose breakpoint lies
 * nearest to the board that common practice names for the pattern: its length in feet less 31 (common
 * practice, no source). All layouts are then compared on this one line. When no line reaches the pocket, the
 * one that comes nearest to it on the lane is used, and said so.
 */
export function findLine(
  problem: ShotProblem,
  layout: Layout,
  patternLength: number,
  laydownBoard?: number,
): Line {
  const engine = simulator(problem);
  const { radius } = problem.ball.published;
  const wantedBreakpoint = Math.max(LEAST_BREAKPOINT, to(patternLength, FOOT) - 31);
  const target = boardToX(POCKET_BOARD);
  let best: { line: Line; off: number } | null = null;
  for (const board of laydownBoard === undefined ? LAYDOWN_BOARDS : [laydownBoard]) {
    const x = boardToX(board);
    const aimed = aimAt(target, x, (angle) => engine.shot(layout, NOMINAL_WORLD, { x, angle }).shot);
    const { shot } = engine.shot(layout, NOMINAL_WORLD, aimed.launch);
    if (shot.outcome !== 'pins') continue;
    const { breakpointX, pinsX } = reactionNumbers(shot, radius);
    const off = aimed.found
      ? Math.abs(xToBoard(breakpointX) - wantedBreakpoint)
      : MISSED + Math.abs(xToBoard(pinsX) - POCKET_BOARD);
    if (!best || off < best.off)
      best = { line: { launch: aimed.launch, laydownBoard: board, reachesPocket: aimed.found }, off };
  }
  if (best) return best.line;
  const board = laydownBoard ?? POCKET_BOARD;
  return { launch: { x: boardToX(board), angle: 0 }, laydownBoard: board, reachesPocket: false };
}

/** Outermost board a line is planned over. */
const LEAST_BREAKPOINT = 3;

/** Any line that reaches the pocket comes before any that does not. */
const MISSED = 100;

export const lineAnswer = ({ launch, laydownBoard, reachesPocket }: Line) => ({
  laydownBoard,
  launchAngleDeg: to(launch.angle, DEGREE),
  pocketBoard: POCKET_BOARD,
  reachesPocket,
});
