import { describe, expect, test } from 'vitest';
import { BOARD } from '../../../src/base/constants.js';
import { boardToX } from '../../../src/motion/lane/boards.js';
import { oiledLane } from '../../../src/motion/lane/oil.js';
import { ON_TARGET, reAim } from '../../../src/motion/reaction/re-aim.js';
import type { Launch } from '../../../src/motion/shot/release.js';
import { rollShot } from '../../../src/motion/shot/shot.js';
import { drilledBall, expectWithin, last, usualRelease } from '../../support/bodies.js';
import { demoPattern } from '../../support/patterns.js';

const STEEPEST = 0.15;
const settings = { step: 0.002, freshSurface: { bandWidth: 0.00635, carriedShare: 0.15, wornPerPass: 0.3 } };
const lane = oiledLane(demoPattern);
const pocket = boardToX(17.5);

/** Rolls, and counts the shots. */
function counted(release = usualRelease, body = drilledBall) {
  const count = { shots: 0 };
  const roll = (launch: Launch) => {
    count.shots++;
    return { launch, shot: rollShot(body, release, launch, lane, settings) };
  };
  return { count, roll };
}

describe('reAim', () => {
  const near = { x: boardToX(26), angle: 0.05 };

  test.each([
    { name: 'a little faster', change: { speed: usualRelease.speed + 0.2 } },
    { name: 'a little slower', change: { speed: usualRelease.speed - 0.2 } },
    { name: 'with less rotation', change: { axisRotation: usualRelease.axisRotation - 0.15 } },
  ])('brings a ball bowled $name back to the target in a few shots', ({ change }) => {
    const before = reAim(pocket, STEEPEST, near, 10, counted().roll);
    expect(before).not.toBeNull();
    const { count, roll } = counted({ ...usualRelease, ...change });
    const again = reAim(pocket, STEEPEST, before!.launch, 10, roll);
    expect(count.shots).toBeLessThanOrEqual(5);
    expect(again!.shot.outcome).toBe('pins');
    expectWithin(last(again!.shot.x), pocket, ON_TARGET);
    expect(again!.launch.x).toBe(near.x);
  });

  test('rolls once where the launch is on target already', () => {
    const there = reAim(pocket, STEEPEST, near, 10, counted().roll)!;
    const { count, roll } = counted();
    expect(reAim(pocket, STEEPEST, there.launch, 10, roll)!.launch).toEqual(there.launch);
    expect(count.shots).toBe(1);
  });

  test('gives up at once on a ball in the gutter, and on one that cannot be computed', () => {
    const gutter = counted();
    expect(reAim(pocket, STEEPEST, { x: boardToX(5), angle: 0.1 }, 10, gutter.roll)).toBeNull();
    expect(gutter.count.shots).toBe(1);
    const broken = counted(usualRelease, { ...drilledBall, mass: Number.NaN });
    expect(reAim(pocket, STEEPEST, near, 10, broken.roll)).toBeNull();
    expect(broken.count.shots).toBe(1);
  });

  test('gives up where the line would be steeper than a ball is sent', () => {
    const there = reAim(pocket, STEEPEST, near, 10, counted().roll)!;
    expect(reAim(pocket, there.launch.angle + 0.02, near, 10, counted().roll)).not.toBeNull();
    expect(reAim(pocket, there.launch.angle - 1e-3, near, 10, counted().roll)).toBeNull();
  });

  test('a fiftieth of a board is what near enough means', () => {
    expect(ON_TARGET).toBeLessThanOrEqual(BOARD / 50);
  });
});
