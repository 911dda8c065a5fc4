import type { Layout } from '../layout/layout.js';
import { aimAt } from '../motion/aim.js';
import { boardToX, xToBoard } from '../motion/boards.js';
import { reactionNumbers } from '../motion/reaction.js';
import type { Launch } from '../motion/release.js';
import { isAtPocket, POCKET_BOARD } from './pocket.js';
import type { ShotProblem } from './shot-problem.js';
import { simulator } from './simulator.js';
import { NOMINAL_WORLD } from './world.js';

/** The line a bowler plays: where the ball is laid down, and in which direction. */
export interface Line {
  readonly launch: Launch;
  readonly laydownBoard: number;
  /** False when even the nearest direction ends beside the pocket. */
  readonly reachesPocket: boolean;
}

/**
 * Finds the line on which the ball with a given layout reaches the pocket, from nothing.
 *
 * Of all laydown boards from which a launch direction exists, it takes the one whose breakpoint lies
 * nearest to the board that common practice names for the pattern. When no line reaches the pocket, the
 * one that comes nearest to it on the lane is used, and said so.
 */
export function findLine(problem: ShotProblem, layout: Layout): Line {
  const engine = simulator(problem);
  const { radius } = problem.ball.published;
  const { laydownBoards, breakpointBoard } = problem.play;
  const target = boardToX(POCKET_BOARD);
  let best: { line: Line; off: number } | null = null;
  for (const board of laydownBoards) {
    const x = boardToX(board);
    const aimed = aimAt(target, x, (angle) => engine.shot(layout, NOMINAL_WORLD, { x, angle }).shot);
    const { shot } = engine.shot(layout, NOMINAL_WORLD, aimed.launch);
    if (shot.outcome !== 'pins') continue;
    const { breakpointX, pinsX } = reactionNumbers(shot, radius);
    const reachesPocket = isAtPocket(shot.outcome, pinsX);
    const off = reachesPocket
      ? Math.abs(xToBoard(breakpointX) - breakpointBoard)
      : MISSED + Math.abs(xToBoard(pinsX) - POCKET_BOARD);
    if (!best || off < best.off)
      best = { line: { launch: aimed.launch, laydownBoard: board, reachesPocket }, off };
  }
  if (best) return best.line;
  const board = laydownBoards.length === 1 ? laydownBoards[0] : POCKET_BOARD;
  return { launch: { x: boardToX(board), angle: 0 }, laydownBoard: board, reachesPocket: false };
}

/** Any line that reaches the pocket comes before any that does not. */
const MISSED = 100;
