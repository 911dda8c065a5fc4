import { describe, expect, test } from 'vitest';
import { BOARD } from '../../src/base/constants.js';
import { DEGREE, to } from '../../src/base/units.js';
import { xToBoard } from '../../src/motion/lane/boards.js';
import { ballProblem } from '../../src/prepare/ball-problem.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import { demoShelf } from '../../src/records/read/shelf.js';
import { MOST_LAYDOWN_BOARD } from '../../src/records/schemas/bowler.js';
import type { Lane } from '../../src/records/schemas/lane.js';
import { loadPractice } from '../../src/records/shared/shared-data.js';
import { findLine, findLineInTurns } from '../../src/simulate/line.js';
import { type ShotProblem, unaimedProblem } from '../../src/simulate/shot-problem.js';
import { simulator } from '../../src/simulate/simulator.js';
import { arrowsBoard, offUsual } from '../../src/simulate/usual-line.js';
import { NO_DEVIATIONS } from '../../src/simulate/worlds/deviations.js';

const { bowlers, balls, lanes } = demoShelf();
const pick = <T>(list: readonly { id: string; record: T }[], id: string): T =>
  list.find((each) => each.id === id)!.record;
const record = pick(balls, 'plain-medium');

const problemOf = (bowlerId: string, lane: Lane): ShotProblem => {
  const bowler = pick(bowlers, bowlerId);
  return unaimedProblem(lane, bowler, record, ballProblem(record, bowler, 'moment'));
};
const found = new Map<string, ReturnType<typeof findLineOf>>();
/** A bowler's line on a lane, found once. */
function lineOf(bowlerId: string, lane: Lane): ReturnType<typeof findLineOf> {
  const key = JSON.stringify([bowlerId, lane]);
  const line = found.get(key) ?? findLineOf(bowlerId, lane);
  found.set(key, line);
  return line;
}
const findLineOf = (bowlerId: string, lane: Lane) => {
  const problem = problemOf(bowlerId, lane);
  const layout = toLayout(MIDDLE_LAYOUT, problem.ball.published.radius);
  const line = findLine(problem, layout);
  const engine = simulator(problem);
  const rolled = engine.shot(layout, NO_DEVIATIONS, line.launch);
  return { line, shot: rolled.shot, reaction: engine.read(rolled).reaction };
};

describe('the line that is played', () => {
  test('of an average right-hander on the house shot is a league bowler’s (common practice, no source)', () => {
    const { line, shot, reaction } = lineOf('average-right', pick(lanes, 'house-easy'));
    const within = (value: number, least: number, most: number): void => {
      expect(value).toBeGreaterThanOrEqual(least);
      expect(value).toBeLessThanOrEqual(most);
    };
    expect(line.reachesPocket).toBe(true);
    within(line.laydownBoard, 14, 24);
    within(arrowsBoard(shot), 10, 16.5);
    within(to(line.launch.angle, DEGREE), 0.5, 2.5);
    within(to(reaction.totalHook, BOARD), 14, 24);
    within(to(reaction.entryAngle, DEGREE), 4, 6);
  });

  test.each(bowlers.map(({ id }) => id))('%s: no line that cannot be bowled, on any lane', (id) => {
    const { laydownBoard, launchDeg } = loadPractice().line;
    for (const { record: lane } of lanes) {
      const { line } = lineOf(id, lane);
      expect(line.laydownBoard).toBeLessThanOrEqual(laydownBoard.farthest);
      expect(Math.abs(to(line.launch.angle, DEGREE))).toBeLessThanOrEqual(launchDeg.farthest + 1e-9);
    }
  });

  test.each(lanes.map(({ id }) => id))(
    '%s: an average right-hander’s keeps a standard deviation of the direction off the gutter',
    (id) => {
      const lane = pick(lanes, id);
      const { aimScatter } = problemOf('average-right', lane).play;
      const { shot, reaction } = lineOf('average-right', lane);
      expect(xToBoard(reaction.breakpointX) - 0.5).toBeGreaterThan(
        (aimScatter * reaction.breakpointY) / BOARD,
      );
      expect(shot.outcome).toBe('pins');
    },
  );

  test('goes farther in the more a bowler’s direction scatters, where the gutter is near', () => {
    const [sure, wild] = [0.2, 0.6].map((launchAngleDeg) => {
      const bowler = pick(bowlers, 'average-right');
      const scatter = { speedMph: 0, revRateRpm: 0, axisTiltDeg: 0, axisRotationDeg: 0, launchAngleDeg };
      const ball = ballProblem(record, bowler, 'moment');
      const problem = unaimedProblem(pick(lanes, 'dry'), { ...bowler, scatter }, record, ball);
      return findLine(problem, toLayout(MIDDLE_LAYOUT, problem.ball.published.radius)).laydownBoard;
    });
    expect(wild).toBeGreaterThan(sure + 1);
  });

  test('a bowler’s record does not take a laydown farther in than the trade says', () => {
    expect(MOST_LAYDOWN_BOARD).toBe(loadPractice().line.laydownBoard.farthest);
  });

  test('where no line is left within those limits, the nearest is played and said not to reach', () => {
    const problem = problemOf('rev-dominant', pick(lanes, 'short'));
    const layout = toLayout(MIDDLE_LAYOUT, problem.ball.published.radius);
    const narrow = { ...problem, play: { ...problem.play, laydownBoard: { least: 12, most: 14 } } };
    const line = findLine(narrow, layout);
    expect(line.reachesPocket).toBe(false);
    const { shot } = simulator(narrow).shot(layout, NO_DEVIATIONS, line.launch);
    expect(shot.outcome).toBe('pins');
    expect(xToBoard(shot.x[shot.x.length - 1])).toBeGreaterThan(18.5); // it hooks past
  });

  test('is the one that strays least from what bowlers play, of all laydown boards', () => {
    const problem = problemOf('average-right', pick(lanes, 'house-easy'));
    const layout = toLayout(MIDDLE_LAYOUT, problem.ball.published.radius);
    const off = (board: number): number => {
      const one = { ...problem, play: { ...problem.play, laydownBoard: { least: board, most: board } } };
      const { launch, reachesPocket } = findLine(one, layout);
      const engine = simulator(one);
      const rolled = engine.shot(layout, NO_DEVIATIONS, launch);
      return reachesPocket
        ? offUsual({ shot: rolled.shot, reaction: engine.read(rolled).reaction }, one.play)
        : 1e9;
    };
    const chosen = findLine(problem, layout).laydownBoard;
    for (const board of [10, 14, 18, 26, 30, 33]) expect(off(board)).toBeGreaterThan(off(chosen));
  });
});

describe('24 games on the oil', () => {
  /** How far the laydown moves left, boards. */
  const moved = (id: string): number => {
    const { games: _, ...fresh } = pick(lanes, id);
    return (
      lineOf('average-right', { ...fresh, games: 24 }).line.laydownBoard -
      lineOf('average-right', fresh).line.laydownBoard
    );
  };

  test.each([
    ['house-easy', 3],
    ['flat-demanding', 3],
    ['short', 2],
    ['long', 2],
    ['worn', 2], // already on board 30 when it is fresh: the foul line's end of the lane stops it at 33
  ] as const)(
    '%s: an average right-hander moves left by %i boards or more (common practice, no source)',
    (id, least) => {
      expect(moved(id)).toBeGreaterThanOrEqual(least);
    },
  );

  test('dry: with little oil to take, no more than on the house shot', () => {
    expect(moved('dry')).toBeGreaterThanOrEqual(0);
    expect(moved('dry')).toBeLessThanOrEqual(moved('house-easy'));
  });

  test('on the line of the fresh oil the ball hooks more and rolls sooner', () => {
    const lane = pick(lanes, 'house-easy');
    const { line } = lineOf('average-right', lane);
    const on = (games: number) => {
      const problem = problemOf('average-right', { ...lane, games });
      const layout = toLayout(MIDDLE_LAYOUT, problem.ball.published.radius);
      const engine = simulator(problem);
      return engine.read(engine.shot(layout, NO_DEVIATIONS, line.launch)).reaction;
    };
    const [fresh, worn] = [on(0), on(24)];
    expect(worn.totalHook).toBeGreaterThan(fresh.totalHook + 2 * BOARD);
    expect(worn.hookStart).toBeLessThan(fresh.hookStart);
    expect(worn.rollStart).toBeLessThan(fresh.rollStart);
  });
});

test('findLineInTurns: the same line on fresh and on worn oil, with turns of the event loop in between', async () => {
  for (const id of ['house-easy', 'worn']) {
    const problem = problemOf('average-right', pick(lanes, id));
    const layout = toLayout(MIDDLE_LAYOUT, problem.ball.published.radius);
    let turns = 0;
    const count = (): void => {
      turns += 1;
      counting = setImmediate(count);
    };
    let counting = setImmediate(count);
    const line = await findLineInTurns(problem, layout);
    clearImmediate(counting);
    expect(line).toEqual(findLine(problem, layout));
    expect(turns).toBeGreaterThan(5);
  }
});
