import { expect, test } from 'vitest';
import { ballProblem } from '../../src/prepare/ball-problem.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import type { Lane } from '../../src/records/schemas/lane.js';
import { unaimedProblem } from '../../src/simulate/shot-problem.js';
import { simulator } from '../../src/simulate/simulator.js';
import { HIGH_SURFACE, LOW_SURFACE } from '../../src/simulate/worlds/assumed-surface.js';
import { drawDeviations, NO_DEVIATIONS } from '../../src/simulate/worlds/deviations.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';

const ball = ballProblem(plainBall, averageBowler, 'moment');
const launch = { x: -0.1, angle: 0.03 };

/** Where the ball ends, m, when only the rate of wear differs from the nominal world. */
function endAt(lane: Lane, burnPerGame: number): number {
  const engine = simulator(unaimedProblem(lane, averageBowler, plainBall, ball));
  const deviations = { ...NO_DEVIATIONS, surface: { ...NO_DEVIATIONS.surface, burnPerGame } };
  const { x } = engine.shot(toLayout(MIDDLE_LAYOUT, ball.published.radius), deviations, launch).shot;
  return x[x.length - 1];
}

test('games make the ball hook more, the more oil a game takes', () => {
  const worn = { ...houseLane, games: 30 };
  const slow = endAt(worn, LOW_SURFACE.burnPerGame);
  const fast = endAt(worn, HIGH_SURFACE.burnPerGame);
  expect(slow).toBeLessThan(endAt(houseLane, LOW_SURFACE.burnPerGame)); // farther left
  expect(fast).toBeLessThan(slow);
});

test('on fresh oil the rate of wear changes nothing, to the last bit', () => {
  for (const lane of [houseLane, { ...houseLane, games: 0 }])
    expect(endAt(lane, HIGH_SURFACE.burnPerGame)).toBe(endAt(houseLane, LOW_SURFACE.burnPerGame));
});

test('worlds draw both rates of wear within their ranges', () => {
  const { published } = ball;
  const worlds = drawDeviations({ seed: 3, count: 500, bowler: averageBowler, published, bodyCount: 8 });
  for (const key of ['burnPerGame', 'carriedDown'] as const) {
    const drawn = worlds.map(({ surface }) => surface[key]);
    expect(Math.min(...drawn)).toBeGreaterThanOrEqual(LOW_SURFACE[key]);
    expect(Math.max(...drawn)).toBeLessThanOrEqual(HIGH_SURFACE[key]);
    // 500 even draws leave no tenth of the range empty at either end: (9/10)^500 is below 1e-22
    const tenth = (HIGH_SURFACE[key] - LOW_SURFACE[key]) / 10;
    expect(Math.min(...drawn)).toBeLessThan(LOW_SURFACE[key] + tenth);
    expect(Math.max(...drawn)).toBeGreaterThan(HIGH_SURFACE[key] - tenth);
  }
});
