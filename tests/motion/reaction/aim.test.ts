import { describe, expect, test } from 'vitest';
import { LANE_WIDTH } from '../../../src/base/constants.js';
import { boardToX, xToBoard } from '../../../src/motion/lane/boards.js';
import { oiledLane } from '../../../src/motion/lane/oil.js';
import { aimAt } from '../../../src/motion/reaction/aim.js';
import { rollShot } from '../../../src/motion/shot/shot.js';
import { drilledBall, expectWithin, last, usualRelease } from '../../support/bodies.js';
import { uniformLane } from '../../support/dry-lanes.js';
import { demoPattern } from '../../support/patterns.js';

/** Far beyond what any of these needs, rad. */
const STEEPEST = 0.15;
const settings = { step: 0.002, freshSurface: { bandWidth: 0.00635, carriedShare: 0.15, wornPerPass: 0.3 } };
const lane = oiledLane(demoPattern);

describe('boards', () => {
  test('count from the right edge; the middle of board 20 is the middle of the lane', () => {
    expectWithin(boardToX(20), 0, 1e-15);
    expectWithin(boardToX(0.5), LANE_WIDTH / 2, 1e-15);
    expectWithin(boardToX(39.5), -LANE_WIDTH / 2, 1e-15);
    for (const board of [1, 7.3, 39]) expectWithin(xToBoard(boardToX(board)), board, 1e-13);
  });
});

describe('aimAt', () => {
  const target = boardToX(17.5);

  test.each([20, 26, 32])('finds the line to the pocket from board %i', (board) => {
    const x = boardToX(board);
    const roll = (angle: number) => rollShot(drilledBall, usualRelease, { x, angle }, lane, settings);
    const aim = aimAt(target, x, STEEPEST, roll);
    expect(aim.found).toBe(true);
    expect(aim.shots).toBeLessThanOrEqual(20);
    const shot = roll(aim.launch.angle);
    expect(shot.outcome).toBe('pins');
    expectWithin(last(shot.x), target, 1e-4);
  });

  test('needs few shots for a ball that goes straight', () => {
    const roll = (angle: number) =>
      rollShot(
        drilledBall,
        { ...usualRelease, axisRotation: 0 },
        { x: 0.2, angle },
        uniformLane(0.03),
        settings,
      );
    const aim = aimAt(target, 0.2, STEEPEST, roll);
    expect(aim.found).toBe(true);
    expect(aim.shots).toBeLessThanOrEqual(5);
  });

  test('says so when no angle will do, and gives the nearest launch that stays on the lane', () => {
    // from board 10 this ball hooks past the pocket unless sent so wide that it falls into the gutter
    const x = boardToX(10);
    const roll = (angle: number) => rollShot(drilledBall, usualRelease, { x, angle }, lane, settings);
    const aim = aimAt(target, x, STEEPEST, roll);
    expect(aim.found).toBe(false);
    expect(aim.shots).toBeLessThanOrEqual(20);
    const nearest = roll(aim.launch.angle);
    expect(nearest.outcome).toBe('pins');
    expect(last(nearest.x)).toBeLessThan(target);
    expect(roll(aim.launch.angle + 0.005).outcome).toBe('gutter');
  });

  test('never sends a ball out more steeply than it may, and comes as near as that allows', () => {
    const x = boardToX(20);
    const tried: number[] = [];
    const steepest = 0.07;
    const roll = (angle: number) => {
      tried.push(Math.abs(angle));
      return rollShot(drilledBall, usualRelease, { x, angle }, lane, settings);
    };
    const aim = aimAt(target, x, steepest, roll);
    expect(aim.found).toBe(false);
    expect(Math.max(...tried)).toBe(steepest);
    expect(aim.launch.angle).toBe(steepest); // this ball needs 0.0723
  });

  test('survives shots that cannot be computed', () => {
    const broken = { ...drilledBall, mass: Number.NaN };
    const aim = aimAt(target, 0, STEEPEST, (angle) =>
      rollShot(broken, usualRelease, { x: 0, angle }, lane, settings),
    );
    expect(aim.found).toBe(false);
    expect(Number.isFinite(aim.launch.angle)).toBe(true);
  });
});
