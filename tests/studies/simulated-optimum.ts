import { DEGREE, to } from '../../src/base/units.js';
import { boardToX } from '../../src/motion/lane/boards.js';
import { aimAt } from '../../src/motion/reaction/aim.js';
import { ballProblem } from '../../src/prepare/ball-problem.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import type { Ball } from '../../src/records/schemas/ball.js';
import type { Bowler } from '../../src/records/schemas/bowler.js';
import type { Lane } from '../../src/records/schemas/lane.js';
import { POCKET_BOARD } from '../../src/simulate/pocket.js';
import { unaimedProblem } from '../../src/simulate/shot-problem.js';
import { simulator } from '../../src/simulate/simulator.js';
import { NO_DEVIATIONS } from '../../src/simulate/worlds/deviations.js';

/**
 * A published simulated optimum: 17.9 mph, 416 rpm, 45° of axis rotation, released on board 28 from the left,
 * sent 1.8° to the right (reports of AIP Advances 15, 045222, 2025).
 */
export const PUBLISHED = { speedMph: 17.9, revRateRpm: 416, axisRotationDeg: 45, angleDeg: 1.8 };

/** Board 28 from the left, as three reports have it: a right-hander's board. */
export const BOARD = 12;

/** Steepest direction looked at, rad. */
const STEEPEST = 0.15;

/**
 * The direction, degrees to the right, in which our ball reaches the pocket from a board with the published
 * release; null where there is none. Friction, oil, axis tilt and the ball are not in hand, so they are asked for.
 */
export function ourAngleDeg(bowler: Bowler, ball: Ball, lane: Lane): number | null {
  const { speedMph, revRateRpm, axisRotationDeg } = PUBLISHED;
  const published = { ...bowler, speedMph, revRateRpm, axisRotationDeg };
  const drillable = ballProblem(ball, published, 'moment');
  const engine = simulator(unaimedProblem(lane, published, ball, drillable));
  const layout = toLayout(MIDDLE_LAYOUT, drillable.published.radius);
  const x = boardToX(BOARD);
  const aim = aimAt(
    boardToX(POCKET_BOARD),
    x,
    STEEPEST,
    (angle) => engine.shot(layout, NO_DEVIATIONS, { x, angle }).shot,
  );
  return aim.found ? to(aim.launch.angle, DEGREE) : null;
}
