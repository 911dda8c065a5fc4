import { BOARD, LANE_LENGTH, LANE_WIDTH } from '../../base/constants.js';
import { FOOT } from '../../base/units.js';

/** Spacing of the grid, m. */
const CELL_X = BOARD / 2;
const CELL_Y = FOOT / 2;

/**
 * The grid over the lane on whose nodes a film is kept: half a board by half a foot. The first node lies a cell before the lane's left
 * edge and before the foul line, one more beyond each edge than the lane needs, where a spline's taps may reach.
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

/** Points a side by which the average over a rectangle is taken. */
const SUBPOINTS = 4;

/**
 * A film's averages around each node of the grid, units of oil, row by row: what a film with jumps is made smooth from, once. Sums of
 * films can be made from sums of averages.
 *
 * @param film    units of oil at a point of the lane, m in W
 * @param smearX  sides of the rectangle it is averaged over, m; what lies outside the lane is read at its edge
 * @param smearY  the same along the lane
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

/** The distance from which on the spline over nodes is nothing, m: that of the last row with oil, and a cell and a half more. */
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
