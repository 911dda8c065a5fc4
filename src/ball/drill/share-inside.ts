import type { Stretch } from '../solid/stretch.js';
import type { BoreSolid } from './bore-solid.js';
import { outsideOf } from './bore-stretches.js';

/**
 * Share, 0 to 1, of the volume along stretches that lies inside bores; each point counts once, even inside several bores.
 *
 * @param stretches  at least one, in the frame of the bores
 */
export function shareInside(stretches: readonly Stretch[], bores: readonly BoreSolid[]): number {
  let all = 0;
  let outside = 0;
  for (const { a, d, area, s, e } of stretches) {
    const left = outsideOf(bores, a, d, { enter: s, leave: e });
    all += area * (e - s);
    outside += left.reduce((sum, { enter, leave }) => sum + area * (leave - enter), 0);
  }
  return 1 - outside / all;
}
