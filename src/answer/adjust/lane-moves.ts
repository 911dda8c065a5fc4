import { counted } from '../../base/counted.js';
import { boardToX, xToBoard } from '../../motion/lane/boards.js';
import { aimAt } from '../../motion/reaction/aim.js';
import type { Launch } from '../../motion/shot/release.js';
import { toLayout } from '../../prepare/to-layout.js';
import { MOST_LAYDOWN_BOARD } from '../../records/schemas/bowler.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import { isAtPocket, POCKET_BOARD } from '../../simulate/pocket.js';
import type { Setting } from '../../simulate/setting.js';
import { type Outcome, simulator } from '../../simulate/simulator.js';
import { arrowsBoard } from '../../simulate/usual-line.js';

/** Another line than the one played, on which the ball also reaches the pocket. */
interface LaneMove {
  /** Boards by which feet and target move, positive toward the inside. */
  readonly feetBoards: number;
  readonly targetBoards: number;
  readonly laydownBoard: number;
  readonly arrowsBoard: number;
  readonly outcomes: readonly Outcome[];
}

/** Moves of the feet that are tried, boards. */
const FEET = [-6, -5, -4, -3, -2, -1, 1, 2, 3, 4, 5, 6];

/**
 * Moves on the lane with the ball as drilled: the feet move by some boards, and the target by as many as bring the ball back to the
 * pocket. These include parallel and angular moves. Each is rolled in all worlds of the setting.
 *
 * @param from  the line that was played
 */
export async function laneMoves(
  setting: Setting,
  numbers: LayoutNumbers,
  from: Launch,
): Promise<readonly LaneMove[]> {
  const { problem, ball, evaluator, progress } = setting;
  const layout = toLayout(numbers, ball.published.radius);
  const engine = simulator(problem);
  const roll = (launch: Launch) => engine.shot(layout, problem.worlds[0], launch).shot;
  const [board, target] = [xToBoard(from.x), arrowsBoard(roll(from))];
  const moves = FEET.map((feet) => board + feet)
    .filter((each) => each >= 1 && each <= MOST_LAYDOWN_BOARD)
    .flatMap((laydownBoard) => {
      const x = boardToX(laydownBoard);
      const aimed = aimAt(
        boardToX(POCKET_BOARD),
        x,
        problem.play.steepest,
        (angle) => roll({ x, angle }),
        from.angle,
      );
      const shot = roll(aimed.launch);
      if (!isAtPocket(shot.outcome, shot.x[shot.x.length - 1])) return [];
      const arrows = arrowsBoard(shot);
      return [
        {
          launch: aimed.launch,
          feetBoards: laydownBoard - board,
          targetBoards: arrows - target,
          laydownBoard,
          arrowsBoard: arrows,
        },
      ];
    });
  const count = problem.luck.length;
  const outcomes = await evaluator.evaluate(
    moves.flatMap(({ launch }) =>
      Array.from({ length: count }, (_world, k) => ({ layout, world: 1 + k, launch })),
    ),
    counted(progress('worlds'), moves.length * count),
  );
  return moves.map(({ launch: _, ...move }, i) => ({
    ...move,
    outcomes: outcomes.slice(i * count, (i + 1) * count),
  }));
}
