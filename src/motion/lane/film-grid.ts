import { BOARD, LANE_LENGTH, LANE_WIDTH } from '../../base/constants.js';
import { FOOT } from '../../base/units.js';

/** Spacing of the grid, m. */
const CELL_X = BOARD / 2;
const CELL_Y = FOOT / 2;

/**
 * The grid over the lane at whose nodes a film is stored: half a board by half a foot. It extends one cell beyond each edge of the lane,
 * as far as the taps of a spline reach; its first node lies a cell before the left edge and before the foul line.
 */
export const GRID = {
  /** Cells a metre. */
  PER_CELL_X: 1 / CELL_X,
  PER_CELL_Y: 1 / CELL_Y,
  /** Nodes across and along the lane. */
  COLUMNS: Math.round(LANE_WIDTH / CELL_X) + 3,
  ROWS: Math.round(LANE_LENGTH / CELL_Y) + 3,
} as const;
const { COLUMNS, ROWS } = GRID;

/** Points along each side of the rectangle over which a film is averaged. */
const SUBPOINTS = 4;

/**
 * Averages of a film around each node of the grid, units of oil, row by row: the coefficients of a smooth film in place of one with
 * jumps. They are linear in the film.
 *
 * @param film    units of oil at a point of the lane, m in W
 * @param smearX  side, across the lane, of the rectangle to average over, m; outside the lane the film is that of its edge
 * @param smearY  side along the lane, m
 */
export function smeared(
  film: (x: number, y: number) => number,
  smearX: number,
  smearY: number,
): Float64Array {
  const nodes = new Float64Array(COLUMNS * ROWS);
  for (let j = 0; j < ROWS; j++)
    for (let i = 0; i < COLUMNS; i++)
      nodes[j * COLUMNS + i] = average(
        film,
        (i - 1) * CELL_X - LANE_WIDTH / 2,
        (j - 1) * CELL_Y,
        smearX,
        smearY,
      );
  return nodes;
}

/** Distance beyond which the spline over nodes is 0, m: that of the last row with oil plus a cell and a half. */
export function filmEnd(nodes: Float64Array): number {
  let last = nodes.length - 1;
  while (last >= 0 && nodes[last] === 0) last -= 1;
  if (last < 0) return Number.NEGATIVE_INFINITY;
  const row = Math.floor(last / COLUMNS);
  return row >= ROWS - 3 ? Number.POSITIVE_INFINITY : (row - 1 + 1.5) * CELL_Y; // what lies at the end goes on past it
}

/** Mean over the smear's rectangle around a point. */
function average(
  film: (x: number, y: number) => number,
  x: number,
  y: number,
  smearX: number,
  smearY: number,
): number {
  let sum = 0;
  for (let j = 0; j < SUBPOINTS; j++) {
    const atY = y + ((j + 0.5) / SUBPOINTS - 0.5) * smearY;
    for (let i = 0; i < SUBPOINTS; i++) {
      const atX = x + ((i + 0.5) / SUBPOINTS - 0.5) * smearX;
      const onX = Math.min(LANE_WIDTH / 2, Math.max(-LANE_WIDTH / 2, atX));
      sum += film(onX, Math.min(LANE_LENGTH, Math.max(0, atY)));
    }
  }
  return sum / (SUBPOINTS * SUBPOINTS);
}
