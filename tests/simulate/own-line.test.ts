import { describe, expect, test } from 'vitest';
import { BOARD } from '../../src/base/constants.js';
import { DEGREE, from } from '../../src/base/units.js';
import { boardToX, xToBoard } from '../../src/motion/lane/boards.js';
import { ON_TARGET } from '../../src/motion/reaction/re-aim.js';
import { ballProblem } from '../../src/prepare/ball-problem.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import { findLine } from '../../src/simulate/line.js';
import { isAtPocket } from '../../src/simulate/pocket.js';
import { unaimedProblem } from '../../src/simulate/shot-problem.js';
import { simulator } from '../../src/simulate/simulator.js';
import { NO_DEVIATIONS } from '../../src/simulate/worlds/deviations.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';

const ball = ballProblem(plainBall, averageBowler, 'moment');
const { radius } = ball.published;
const unaimed = unaimedProblem(houseLane, averageBowler, plainBall, ball);
const line = findLine(unaimed, toLayout(MIDDLE_LAYOUT, radius));
const problem = { ...unaimed, launch: line.launch };
const layouts = [
  MIDDLE_LAYOUT,
  { drillingAngleDeg: 20, pinToPapIn: 5.5, valAngleDeg: 20 },
  { drillingAngleDeg: 85, pinToPapIn: 1.5, valAngleDeg: 60 },
  { drillingAngleDeg: 40, pinToPapIn: 3.375, valAngleDeg: 45 },
].map((layout) => toLayout(layout, radius));

describe('each layout on its own line', () => {
  test('reaches the pocket, from the laydown of the usual middle layout', () => {
    const engine = simulator(problem);
    for (const layout of layouts) {
      const { shot, launch } = engine.ownShot(layout);
      expect(shot.outcome).toBe('pins');
      expect(Math.abs(shot.x[shot.x.length - 1] - boardToX(17.5))).toBeLessThanOrEqual(ON_TARGET);
      expect(launch.x).toBe(line.launch.x);
    }
  });

  test('differs between layouts that hook differently, as the launch makes up for the hook', () => {
    const engine = simulator(problem);
    const onOneLine = layouts.map((layout) => {
      const { x } = engine.shot(layout, NO_DEVIATIONS, line.launch).shot;
      return x[x.length - 1];
    });
    const angles = layouts.map((layout) => engine.ownShot(layout).launch.angle);
    // a ball that ends farther left on the common line is sent out farther
    const byEnd = [...layouts.keys()].sort((a, b) => onOneLine[a] - onOneLine[b]);
    for (let i = 1; i < byEnd.length; i++) expect(angles[byEnd[i]]).toBeLessThan(angles[byEnd[i - 1]]);
  });

  test('does not depend on what was aimed before: workers agree to the last bit', () => {
    const forward = simulator(problem);
    const backward = simulator(problem);
    const there = layouts.map((layout) => forward.ownShot(layout).launch);
    const back = [...layouts].reverse().map((layout) => backward.ownShot(layout).launch);
    expect(back.reverse()).toEqual(there);
  });

  test('is kept in a world when the trial names it, and found for the nominal shot when not', () => {
    const engine = simulator({ ...problem, worlds: [NO_DEVIATIONS] });
    const [layout] = layouts;
    const own = engine.outcome(layout, NO_DEVIATIONS);
    expect(own.launch).toEqual(engine.ownShot(layout).launch);
    expect(isAtPocket(own.shot, own.reaction.pinsX)).toBe(true);
    const unlucky = { ...NO_DEVIATIONS, launchAngle: from(0.5, DEGREE) };
    const missed = engine.outcome(layout, unlucky, own.launch);
    expect(missed.launch).toEqual(own.launch);
    expect(xToBoard(missed.reaction.pinsX)).toBeLessThan(17.5 - 1);
    // left to itself, the bowler still plays the nominal line: luck is not known beforehand
    expect(engine.outcome(layout, unlucky).reaction).toEqual(missed.reaction);
  });

  test('a laydown board of the bowler’s own is kept', () => {
    const own = unaimedProblem(houseLane, { ...averageBowler, laydownBoard: 22 }, plainBall, ball);
    const found = findLine(own, layouts[1]);
    expect(found.laydownBoard).toBe(22);
    const engine = simulator({ ...own, launch: found.launch });
    for (const layout of layouts)
      expect(Math.abs(engine.ownShot(layout).launch.x - boardToX(22))).toBeLessThan(1e-12 * BOARD);
  });
});
