import { BOARD } from '../../base/constants.js';
import { FOOT } from '../../base/units.js';

/*
 * A continuously differentiable version of a field with jumps, cheap enough to ask thousands of times a shot.
 *
 * The field is averaged over the smear around each node of a half-board by half-foot grid, once (`smeared`);
 * `splineOver` goes between the nodes. The two are apart so that a sum of fields can be made from sums of averages.
 */

/** Where a field is wanted, and over what rectangle it is averaged, m. */
export interface FieldExtent {
  readonly fromX: number;
  readonly toX: number;
  readonly fromY: number;
  readonly toY: number;
  readonly smearX: number;
  readonly smearY: number;
}

/** Spacing of the grid, m. */
const CELL_X = BOARD / 2;
const CELL_Y = FOOT / 2;

/** Points a side by which the average over a rectangle is taken. */
const SUBPOINTS = 4;

/** Nodes of the grid over an extent: one more beyond each edge, where taps may reach. */
const gridOf = ({ fromX, toX, fromY, toY }: FieldExtent): { columns: number; rows: number } => ({
  columns: Math.round((toX - fromX) / CELL_X) + 3,
  rows: Math.round((toY - fromY) / CELL_Y) + 3,
});

/** A field's averages over the smear around each node of the grid, row by row. */
export function smeared(raw: (x: number, y: number) => number, extent: FieldExtent): Float64Array {
  const { fromX, fromY } = extent;
  const { columns, rows } = gridOf(extent);
  const nodes = new Float64Array(columns * rows);
  for (let j = 0; j < rows; j++)
    for (let i = 0; i < columns; i++)
      nodes[j * columns + i] = average(raw, fromX + (i - 1) * CELL_X, fromY + (j - 1) * CELL_Y, extent);
  return nodes;
}

/**
 * The tensor quadratic B-spline with given averages as coefficients: nine taps, C1, never below or above its
 * coefficients. Outside the extent it goes on with its edge values.
 * Source: de Boor, A Practical Guide to Splines, ch. IX.
 */
export function splineOver(nodes: Float64Array, extent: FieldExtent): (x: number, y: number) => number {
  const { fromX, fromY } = extent;
  const { columns, rows } = gridOf(extent);
  const lastI = columns - 2;
  const lastJ = rows - 2;
  return (x, y) => {
    const s = within((x - fromX) / CELL_X + 1, lastI);
    const t = within((y - fromY) / CELL_Y + 1, lastJ);
    const i = Math.floor(s + 0.5);
    const j = Math.floor(t + 0.5);
    const u = s - i;
    const v = t - j;
    const a0 = 0.5 * (0.5 - u) * (0.5 - u);
    const a1 = 0.75 - u * u;
    const a2 = 0.5 * (0.5 + u) * (0.5 + u);
    const at = (j - 1) * columns + i - 1;
    const up = at + columns;
    const top = up + columns;
    return (
      0.5 * (0.5 - v) * (0.5 - v) * (a0 * nodes[at] + a1 * nodes[at + 1] + a2 * nodes[at + 2]) +
      (0.75 - v * v) * (a0 * nodes[up] + a1 * nodes[up + 1] + a2 * nodes[up + 2]) +
      0.5 * (0.5 + v) * (0.5 + v) * (a0 * nodes[top] + a1 * nodes[top + 1] + a2 * nodes[top + 2])
    );
  };
}

/** Keeps a grid coordinate where all three taps exist: from node 1 to the last but one. NaN stays NaN. */
const within = (s: number, last: number): number => Math.max(1, Math.min(last, s));

/** Mean over the smear's rectangle around a point, the part outside the extent read at its edge. */
function average(raw: (x: number, y: number) => number, x: number, y: number, extent: FieldExtent): number {
  const { fromX, toX, fromY, toY, smearX, smearY } = extent;
  let sum = 0;
  for (let j = 0; j < SUBPOINTS; j++) {
    const atY = y + ((j + 0.5) / SUBPOINTS - 0.5) * smearY;
    for (let i = 0; i < SUBPOINTS; i++) {
      const atX = x + ((i + 0.5) / SUBPOINTS - 0.5) * smearX;
      sum += raw(Math.min(toX, Math.max(fromX, atX)), Math.min(toY, Math.max(fromY, atY)));
    }
  }
  return sum / (SUBPOINTS * SUBPOINTS);
}
