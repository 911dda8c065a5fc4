import { setImmediate as nextTurn } from 'node:timers/promises';
import type { Layout } from '../layout/layout.js';
import { boardToX, xToBoard } from '../motion/lane/boards.js';
import { aimAt } from '../motion/reaction/aim.js';
import { reactionNumbers } from '../motion/reaction/reaction.js';
import type { Launch } from '../motion/shot/release.js';
import type { LeanShot } from '../motion/shot/shot.js';
import { isAtPocket, POCKET_BOARD } from './pocket.js';
import type { Play, ShotProblem } from './shot-problem.js';
import { simulator } from './simulator.js';
import { staysOnLane } from './stays-on-lane.js';
import { arrowsBoard, offUsual, type Played, tooWide } from './usual-line.js';

/** The line a bowler plays: where the ball is laid down, and in which direction. */
export interface Line {
  readonly launch: Launch;
  readonly laydownBoard: number;
  /** False when even the nearest direction ends beside the pocket. */
  readonly reachesPocket: boolean;
}

/** Step, boards, in which laydowns are tried; then the boards next to the best are. */
const COARSE = 2;

/** Penalty of a line that does not reach the pocket: any line that does comes before it. */
const MISSED = 1e6;

/** Boards that bowlers move their feet for each board at the arrows when the oil wears (common practice, no source). */
export const FEET_PER_ARROWS = 2;

/**
 * Finds, from scratch, the line on which the ball with a given layout reaches the pocket.
 *
 * Among the laydown boards from which the pocket can be reached in an allowed direction, it takes the one whose line is most
 * like what bowlers play on such a pattern (`offUsual`). On worn oil it does as bowlers do: it starts from the line on fresh
 * oil and moves the feet two boards for each board at the arrows until the ball hits, farther in where that is too near the gutter.
 * If no line reaches the pocket, the one that comes nearest is used, and `reachesPocket` is false.
 *
 * @throws {Refusal} `ball-would-hop` when the ball stays on the lane from no laydown board
 */
export function findLine(problem: ShotProblem, layout: Layout): Line {
  const search = lineSearch(problem, layout);
  for (;;) {
    const { done, value } = search.next();
    if (done) return value;
  }
}

/** The same, in turn with what else waits in the event loop. */
export async function findLineInTurns(problem: ShotProblem, layout: Layout): Promise<Line> {
  const search = lineSearch(problem, layout);
  for (;;) {
    const { done, value } = search.next();
    if (done) return value;
    await nextTurn();
  }
}

/** Yields after each laydown board that was tried. */
function* lineSearch(problem: ShotProblem, layout: Layout): Generator<undefined, Line> {
  const { traffic, ...freshPattern } = problem.pattern;
  const fresh = traffic && (yield* bestLine({ ...problem, pattern: freshPattern }, layout, offUsual));
  if (!fresh?.reachesPocket) return yield* bestLine(problem, layout, offUsual);
  const offMove: Off = (played, play) => {
    const feet = xToBoard(played.shot.launch.x) - fresh.laydownBoard;
    const arrows = arrowsBoard(played.shot) - fresh.arrowsBoard;
    return (feet - FEET_PER_ARROWS * arrows) ** 2 + tooWide(played, play);
  };
  return yield* bestLine(problem, layout, offMove);
}

/** How far a shot that reaches the pocket is from the wanted line. */
type Off = (played: Played, play: Play) => number;

/** The line of the shot that reaches the pocket and lies nearest to the wanted one. */
function* bestLine(
  problem: ShotProblem,
  layout: Layout,
  offOf: Off,
): Generator<undefined, Line & { readonly arrowsBoard: number }> {
  const engine = simulator(problem);
  const { radius } = problem.ball.published;
  const { least, most } = problem.play.laydownBoard;
  const tried: { readonly line: Line & { readonly arrowsBoard: number }; readonly off: number }[] = [];
  let ending: LeanShot['outcome'] = 'pins';
  const attempt = (board: number): void => {
    const x = boardToX(board);
    const roll = (angle: number) => engine.shot(layout, problem.worlds[0], { x, angle }).shot;
    const { launch } = aimAt(boardToX(POCKET_BOARD), x, problem.play.steepest, roll);
    const shot = roll(launch.angle);
    ending = shot.outcome;
    if (shot.outcome !== 'pins') return;
    const reaction = reactionNumbers(shot, radius);
    const reachesPocket = isAtPocket(shot.outcome, reaction.pinsX);
    const off = reachesPocket
      ? offOf({ shot, reaction }, problem.play)
      : MISSED + Math.abs(xToBoard(reaction.pinsX) - POCKET_BOARD);
    tried.push({ line: { launch, laydownBoard: board, reachesPocket, arrowsBoard: arrowsBoard(shot) }, off });
  };
  const best = () => tried.reduce((a, b) => (b.off < a.off ? b : a));
  for (let board = least; board <= most; board += COARSE) {
    attempt(board);
    yield;
  }
  if (tried.length > 0) {
    const { laydownBoard } = best().line;
    for (const board of [laydownBoard - 1, laydownBoard + 1])
      if (board >= least && board <= most) attempt(board);
    return best().line;
  }
  staysOnLane(ending);
  const board = Math.min(most, Math.max(least, POCKET_BOARD));
  return {
    launch: { x: boardToX(board), angle: 0 },
    laydownBoard: board,
    reachesPocket: false,
    arrowsBoard: board,
  };
}
