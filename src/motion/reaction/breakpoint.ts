import type { LeanShot } from '../shot/shot.js';

/**
 * The outermost point of a path toward the ball's own gutter (greatest x), m in W.
 *
 * Between samples the lateral velocity is taken as linear in time, so the point lies where it vanishes. A path
 * that only ever moves one way has its outermost point at an end.
 */
export function breakpointOf({ time, x, y, vx, vy }: LeanShot): { readonly x: number; readonly y: number } {
  let best = { x: x[0], y: y[0] };
  const end = x.length - 1;
  if (x[end] > best.x) best = { x: x[end], y: y[end] };
  for (let i = 0; i < end; i++) {
    if (!(vx[i] > 0 && vx[i + 1] <= 0)) continue;
    const after = ((time[i + 1] - time[i]) * vx[i]) / (vx[i] - vx[i + 1]);
    const peak = x[i] + (vx[i] * after) / 2;
    if (peak > best.x) best = { x: peak, y: y[i] + after * vy[i] };
  }
  return best;
}
