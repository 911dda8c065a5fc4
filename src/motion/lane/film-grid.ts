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

/** Points at which a piece of the smear's rectangle is read, along each of its sides. */
const SUBPOINTS = 4;

/** Where a film may jump: across the lane and along it, m in W. */
export interface FilmJumps {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

/**
 * Averages of a film around each node of the grid, units of oil, row by row: the coefficients of a smooth film in place of one with
 * jumps. They are linear in the film.
 *
 * @param film    units of oil at a point of the lane, m in W
 * @param smearX  side, across the lane, of the rectangle to average over, m; outside the lane the film is that of its edge
 * @param smearY  side along the lane, m
 * @param jumps   the rectangle is cut there, so that the averages change as smoothly as these places do
 */
export function smeared(
  film: (x: number, y: number) => number,
  smearX: number,
  smearY: number,
  jumps: FilmJumps = { x: [], y: [] },
): Float64Array {
  const across = Array.from({ length: COLUMNS }, (_, i) =>
    readings((i - 1) * CELL_X - LANE_WIDTH / 2, smearX, jumps.x, -LANE_WIDTH / 2, LANE_WIDTH / 2),
  );
  const along = Array.from({ length: ROWS }, (_, j) =>
    readings((j - 1) * CELL_Y, smearY, jumps.y, 0, LANE_LENGTH),
  );
  const nodes = new Float64Array(COLUMNS * ROWS);
  for (let j = 0; j < ROWS; j++)
    for (let i = 0; i < COLUMNS; i++) {
      let sum = 0;
      for (const y of along[j]) for (const x of across[i]) sum += x.weight * y.weight * film(x.at, y.at);
      nodes[j * COLUMNS + i] = sum;
    }
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

/** A place at which a film is read for an average, and its weight there. */
interface Reading {
  readonly at: number;
  readonly weight: number;
}

/** Places for an average over a stretch: midpoints within each piece between jumps, moved onto the lane, which runs from `least` to `most`. */
function readings(
  middle: number,
  length: number,
  jumps: readonly number[],
  least: number,
  most: number,
): readonly Reading[] {
  const from = middle - length / 2;
  const to = middle + length / 2;
  const inside = [...new Set(jumps)].filter((place) => place > from && place < to);
  const ends = [from, ...inside.sort((a, b) => a - b), to];
  return ends.slice(1).flatMap((end, k) => {
    const size = end - ends[k];
    const weight = (ends.length > 2 ? size / length : 1) / SUBPOINTS; // a stretch may have no length
    return Array.from({ length: SUBPOINTS }, (_, n) => {
      const at = ends[k] + ((n + 0.5) / SUBPOINTS) * size;
      return { at: Math.min(most, Math.max(least, at)), weight };
    });
  });
}
