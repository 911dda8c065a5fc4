import type { LeanShot } from '../shot/shot.js';
import { type Headings, headingsOf } from './headings.js';

/**
 * The outermost point of a path toward the ball's own gutter (greatest x), m in W.
 *
 * Between samples the lateral velocity is taken as linear in time, so the point lies where it vanishes. A path
 * that only ever moves one way has its outermost point at an end. How far down the lane it lies is read off the path averaged over a turn
 * of the ball: a drilled ball sways by a fraction of a millimetre once a turn, and near its outermost point it hardly moves across the
 * lane otherwise, so that the point itself jumps from one sway to the next, by some feet.
 */
export function breakpointOf(
  shot: LeanShot,
  headings: Headings = headingsOf(shot),
): { readonly x: number; readonly y: number } {
  return { x: outermost(shot), y: widestPlace(shot, headings) };
}

/** Greatest x of the path itself. */
function outermost({ time, x, vx }: LeanShot): number {
  const end = x.length - 1;
  let best = Math.max(x[0], x[end]);
  for (let i = 0; i < end; i++) {
    if (!(vx[i] > 0 && vx[i + 1] <= 0)) continue;
    const after = ((time[i + 1] - time[i]) * vx[i]) / (vx[i] - vx[i + 1]);
    best = Math.max(best, x[i] + (vx[i] * after) / 2);
  }
  return best;
}

/** Distance down the lane at which the averaged path is widest: where its slope, linear between places, turns leftward. */
function widestPlace({ y }: LeanShot, { places, slopes }: Headings): number {
  const end = places.length - 1;
  let widest = { place: y[0], out: 0 };
  let out = 0; // how far right the averaged path has come
  for (let i = 0; i < end; i++) {
    const gap = places[i + 1] - places[i];
    const from = slopes[i];
    const to = slopes[i + 1];
    if (from < 0 && to >= 0) {
      const share = from / (from - to);
      const atTop = out - (share * gap * from) / 2;
      if (atTop > widest.out) widest = { place: places[i] + share * gap, out: atTop };
    }
    out -= (gap * (from + to)) / 2;
  }
  return out > widest.out ? y[y.length - 1] : widest.place;
}
