import { describe, expect, test } from 'vitest';
import { BOARD, LANE_LENGTH } from '../../src/base/constants.js';
import { DEGREE, FOOT } from '../../src/base/units.js';
import { missRoom } from '../../src/explain/miss-room.js';
import { boardToX } from '../../src/motion/lane/boards.js';
import type { Launch } from '../../src/motion/shot/release.js';
import type { Shot } from '../../src/motion/shot/shot.js';

/** A shot that is all end: only its outcome and last place matter to the room. */
const ending = (x: number, outcome: Shot['outcome'] = 'pins') =>
  ({ outcome, x: Float64Array.of(x) }) as unknown as Shot;

const straight = ({ x, angle }: Launch): Shot => ending(x + LANE_LENGTH * Math.tan(angle));
const pocket = boardToX(17.5);

describe('missRoom', () => {
  test('of a ball that goes straight is the pocket’s width in boards and its angle seen from the foul line', () => {
    const room = missRoom({ x: pocket, angle: 0 }, straight);
    // closed form: one board to either side, and one board over 60 ft; found to 2 % of a step
    for (const side of ['outside', 'inside'] as const) {
      expect(room!.laydownBoards[side]).toBeCloseTo(1, 1);
      expect(Math.abs(room!.laydownBoards[side] - 1)).toBeLessThanOrEqual(0.02 * 0.5);
      const angle = Math.atan(BOARD / LANE_LENGTH) / DEGREE;
      expect(Math.abs(room!.angleDeg[side] - angle)).toBeLessThanOrEqual(0.02 * 0.15);
      // a quarter of the lane, a quarter of the board
      expect(room!.arrowsBoards[side]).toBeCloseTo((15 * FOOT) / LANE_LENGTH, 1);
    }
  });

  test('tells the two sides apart: outside is toward the own gutter', () => {
    const room = missRoom({ x: boardToX(16.7), angle: 0 }, straight)!;
    expect(Math.abs(room.laydownBoards.outside - 0.2)).toBeLessThanOrEqual(0.02 * 0.5);
    expect(Math.abs(room.laydownBoards.inside - 1.8)).toBeLessThanOrEqual(0.02 * 0.5);
  });

  test('is wide where the lane brings misses back, and ends where it is followed no farther', () => {
    const held = ({ x, angle }: Launch): Shot =>
      ending(pocket + 0.1 * (x - pocket) + LANE_LENGTH * Math.tan(angle));
    const room = missRoom({ x: pocket, angle: 0 }, held)!;
    expect(room.laydownBoards).toEqual({ outside: 6, inside: 6 });
  });

  test('ends at the gutter', () => {
    const edge = boardToX(17.1);
    const roll = (launch: Launch): Shot =>
      launch.x > edge ? ending(0.6, 'gutter') : straight({ x: pocket, angle: 0 });
    const { laydownBoards } = missRoom({ x: pocket, angle: 0 }, roll)!;
    expect(Math.abs(laydownBoards.outside - 0.4)).toBeLessThanOrEqual(0.02 * 0.5);
    expect(laydownBoards.inside).toBe(6);
  });

  test('is none where the line itself misses the pocket, or never gets there', () => {
    expect(missRoom({ x: boardToX(20), angle: 0 }, straight)).toBeNull();
    expect(missRoom({ x: pocket, angle: 0 }, () => ending(pocket, 'stopped'))).toBeNull();
    expect(missRoom({ x: pocket, angle: 0 }, () => ending(Number.NaN))).toBeNull();
  });
});
