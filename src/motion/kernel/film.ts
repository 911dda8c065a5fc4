import { LANE_WIDTH } from '../../base/constants.js';
import { GRID } from '../lane/film-grid.js';
import { frictionUnder, type Surface, stretchAt } from '../lane/surface.js';
import { lent, memory } from './memory.js';
import { FLAG } from './slots.js';

const { flags, placeX, placeY, placeFilm } = memory;
const { COLUMNS, ROWS, PER_CELL_X, PER_CELL_Y } = GRID;
const { HAS_FILM } = FLAG;

const HALF_LANE = LANE_WIDTH / 2;

/** Writes the lane's film at the first `count` places. */
export function meetFilm(count: number): void {
  if (flags[HAS_FILM] === 1) writeSpline(lent.film, lent.surface, count);
}

/** The film on a lane at a point, m in W; units of oil. */
export function filmAt(surface: Surface, x: number, y: number): number {
  const { film } = surface;
  if (!film) return 0;
  placeX[0] = x;
  placeY[0] = y;
  writeSpline(film, surface, 1);
  return placeFilm[0];
}

/** Friction of the lane's own film at a point, m in W. */
export const frictionAt = (surface: Surface, x: number, y: number): number =>
  frictionUnder(stretchAt(surface, y), filmAt(surface, x, y));

/**
 * Writes the film at the first `count` places: the tensor-product quadratic B-spline whose coefficients are the averages at the nodes of
 * the grid.
 *
 * Nine taps, continuously differentiable, never beyond the range of its coefficients. Outside the lane it keeps its edge values.
 * Source: de Boor, A Practical Guide to Splines, ch. IX.
 */
function writeSpline(nodes: Float64Array, { filmEnd }: Surface, count: number): void {
  for (let n = 0; n < count; n++) {
    if (placeY[n] >= filmEnd) {
      placeFilm[n] = 0;
      continue;
    }
    // where all three taps exist; NaN stays
    const s = Math.max(1, Math.min(COLUMNS - 2, (placeX[n] + HALF_LANE) * PER_CELL_X + 1));
    const t = Math.max(1, Math.min(ROWS - 2, placeY[n] * PER_CELL_Y + 1));
    const i = (s + 0.5) | 0;
    const j = (t + 0.5) | 0;
    const u = s - i;
    const v = t - j;
    const a0 = 0.5 * (0.5 - u) * (0.5 - u);
    const a1 = 0.75 - u * u;
    const a2 = 0.5 * (0.5 + u) * (0.5 + u);
    const at = Math.max(0, (j - 1) * COLUMNS + i - 1);
    const up = at + COLUMNS;
    const top = up + COLUMNS;
    placeFilm[n] =
      0.5 * (0.5 - v) * (0.5 - v) * (a0 * nodes[at] + a1 * nodes[at + 1] + a2 * nodes[at + 2]) +
      (0.75 - v * v) * (a0 * nodes[up] + a1 * nodes[up + 1] + a2 * nodes[up + 2]) +
      0.5 * (0.5 + v) * (0.5 + v) * (a0 * nodes[top] + a1 * nodes[top + 1] + a2 * nodes[top + 2]);
  }
}
