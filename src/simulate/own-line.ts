import type { Layout } from '../layout/layout.js';
import { boardToX, xToBoard } from '../motion/lane/boards.js';
import { aimAt } from '../motion/reaction/aim.js';
import { reAim } from '../motion/reaction/re-aim.js';
import type { Launch } from '../motion/shot/release.js';
import type { LeanShot } from '../motion/shot/shot.js';
import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import { toLayout } from '../prepare/to-layout.js';
import { isAtPocket, POCKET_BOARD } from './pocket.js';
import type { ShotProblem } from './shot-problem.js';

/** Change of launch angle, away from the bowler's own gutter, with which the response at the pins is measured, rad. */
const PROBE = 0.002;

/** Other laydowns to try, in order, boards farther inside than the usual one. */
const MOVES = [2, -2, 4, -4];

/**
 * Rolls balls on their own lines: each is re-aimed until it reaches the pocket, as a bowler moves the target until the ball hits. The
 * search starts from a near line if there is one, else from the problem's line, which was found for the usual middle layout.
 *
 * The laydown stays, so that only the direction differs between layouts; it moves only where no direction from there reaches the
 * pocket and the bowler named no laydown board. The line is a pure function of the ball and the near line, so that
 * workers agree. A ball that reaches the pocket on no line plays the nearest one found from the usual laydown. Where
 * the middle layout itself misses the pocket the search is short: a ball that a few shots do not bring there plays the
 * middle layout's line.
 *
 * @param ready  makes a layout ready to roll its nominal shot from any launch
 * @returns what rolls a ball from any launch ↦ its shot on its own line
 */
export function ownLines<T extends { readonly shot: LeanShot; readonly launch: Launch }>(
  problem: ShotProblem,
  ready: (layout: Layout) => (launch: Launch) => T,
): (roll: (launch: Launch) => T, near?: Launch) => T {
  const pocketX = boardToX(POCKET_BOARD);
  const usual = problem.launch;
  const { steepest } = problem.play;
  const middle = toLayout(MIDDLE_LAYOUT, problem.ball.published.radius);
  const measure = (): { response: number; isReachable: boolean } => {
    const roll = ready(middle);
    const here = roll(usual).shot;
    const there = roll({ ...usual, angle: usual.angle - PROBE }).shot;
    const response = (endOf(here) - endOf(there)) / PROBE; // m/rad
    return { response, isReachable: isAtPocket(here.outcome, endOf(here)) };
  };
  let measured: ReturnType<typeof measure> | undefined;

  return (roll, near) => {
    measured ??= measure();
    const { response } = measured;
    const from = (launch: Launch): T | null => reAim(pocketX, steepest, launch, response, roll);
    const corrected = (near && from(near)) ?? from(usual);
    if (corrected) return corrected;
    if (!measured.isReachable) return roll(usual);
    let nearest: T | null = null; // from the usual laydown
    for (const x of laydowns(problem)) {
      const rolled = roll(
        aimAt(pocketX, x, steepest, (angle) => roll({ x, angle }).shot, usual.angle).launch,
      );
      if (isAtPocket(rolled.shot.outcome, endOf(rolled.shot))) return rolled;
      nearest ??= rolled;
    }
    return nearest ?? roll(usual);
  };
}

const endOf = ({ x }: LeanShot): number => x[x.length - 1];

/** Laydowns, m, from which a direction is searched for from scratch: the usual one, then others that the bowler may use. */
const laydowns = ({ launch, play: { laydownBoard } }: ShotProblem): readonly number[] => {
  const usual = xToBoard(launch.x);
  const isOffered = (board: number): boolean => board >= laydownBoard.least && board <= laydownBoard.most;
  return [
    launch.x,
    ...MOVES.map((boards) => usual + boards)
      .filter(isOffered)
      .map(boardToX),
  ];
};
