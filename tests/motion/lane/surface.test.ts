import { describe, expect, test } from 'vitest';
import { BOARD, LANE_LENGTH, LANE_WIDTH } from '../../../src/base/constants.js';
import { FOOT } from '../../../src/base/units.js';
import { filmAt } from '../../../src/motion/kernel/film.js';
import { boardToX, xToBoard } from '../../../src/motion/lane/boards.js';
import { filmEnd, GRID, smeared } from '../../../src/motion/lane/film-grid.js';
import { frictionUnder, stretchAt, surfaceOf } from '../../../src/motion/lane/surface.js';
import { expectWithin } from '../../support/bodies.js';
import { twoZoneLane, uniformLane } from '../../support/dry-lanes.js';

const LAW = { oiled: 0.04, dry: 0.2, filmScale: 4 };

test('boards: the 20th of 39 lies in the middle, the first half a board from the right edge, and back', () => {
  expectWithin(boardToX(20), 0, 1e-15);
  expectWithin(boardToX(1), LANE_WIDTH / 2 - BOARD / 2, 1e-15);
  expectWithin(boardToX(39), -LANE_WIDTH / 2 + BOARD / 2, 1e-15);
  for (const board of [1, 7.5, 20, 39]) expectWithin(xToBoard(boardToX(board)), board, 1e-12);
});

describe('dry lanes', () => {
  test('one friction everywhere, whatever lies on it', () => {
    const lane = uniformLane(0.13);
    expect(lane.film).toBeNull();
    expect(lane.filmEnd).toBe(Number.NEGATIVE_INFINITY);
    for (const y of [-1, 0, 5, 30]) expect(frictionUnder(stretchAt(lane, y), 7)).toBe(0.13);
  });

  test('two frictions meet at a line across the lane; the first begins before the foul line', () => {
    const lane = twoZoneLane(0.05, 0.2, 6);
    for (const [y, friction] of [
      [-3, 0.05],
      [0, 0.05],
      [5.999, 0.05],
      [6, 0.2],
      [18, 0.2],
    ] as const)
      expect(frictionUnder(stretchAt(lane, y), 0)).toBe(friction);
    expect(lane.stretches.map(({ fromY }) => fromY)).toEqual([Number.NEGATIVE_INFINITY, 6]);
  });
});

describe('a film on the grid', () => {
  const until = (length: number): Float64Array => smeared((_, y) => (y <= length ? 12 : 0), 0.01, 0.01);

  test('a lane without oil ends at once, one that is oiled to the pins never', () => {
    expect(filmEnd(until(-1))).toBe(Number.NEGATIVE_INFINITY);
    expect(filmEnd(until(LANE_LENGTH))).toBe(Number.POSITIVE_INFINITY);
    expect(surfaceOf(null, LAW).filmEnd).toBe(Number.NEGATIVE_INFINITY);
  });

  test('oil ends where its spline comes to nothing, and not before', () => {
    for (const feet of [10.25, 20.25, 40.25]) {
      const lane = surfaceOf(until(feet * FOOT), LAW);
      // the last node with oil lies a quarter of a foot before; a quadratic spline reaches a cell and a half past its node
      expectWithin(lane.filmEnd, (feet - 0.25 + 0.75) * FOOT, 1e-9);
      expect(filmAt(lane, 0, lane.filmEnd)).toBe(0);
      expect(filmAt(lane, 0, lane.filmEnd - 0.01 * FOOT)).toBeGreaterThan(0);
    }
  });

  test('its nodes are half a board by half a foot apart, one beyond each edge', () => {
    expectWithin(1 / GRID.PER_CELL_X, BOARD / 2, 1e-15);
    expectWithin(1 / GRID.PER_CELL_Y, FOOT / 2, 1e-15);
    expect([GRID.COLUMNS, GRID.ROWS]).toEqual([2 * 39 + 3, 2 * 60 + 3]);
    // straight films come out as they are, but at the edges, past which they are read at the edge
    const slanted = smeared((x, y) => 3 * x + 2 * y, BOARD / 4, FOOT / 4);
    for (const [i, j] of [
      [5, 7],
      [40, 60],
      [70, 110],
    ] as const) {
      const [x, y] = [((i - 1) * BOARD) / 2 - LANE_WIDTH / 2, ((j - 1) * FOOT) / 2];
      expectWithin(slanted[j * GRID.COLUMNS + i], 3 * x + 2 * y, 1e-12);
    }
    expectWithin(slanted[0], (-3 * LANE_WIDTH) / 2, 1e-12);
    expectWithin(slanted[slanted.length - 1], (3 * LANE_WIDTH) / 2 + 2 * LANE_LENGTH, 1e-12);
  });

  test('an average takes in all of its rectangle: of a step across it, the share that lies on the step', () => {
    const width = BOARD / 2;
    const film = smeared((x) => (x > width / 4 ? 8 : 0), width, FOOT / 2);
    const middle = 60 * GRID.COLUMNS + (GRID.COLUMNS - 1) / 2; // x = 0
    expectWithin(film[middle], 2, 1e-12); // a quarter of the points lie past a quarter of the width
    expectWithin(film[middle + 1], 8, 1e-12);
    expectWithin(film[middle - 1], 0, 1e-12);
  });
});
