import type { Surface } from '../../src/motion/lane/surface.js';

/** A dry lane with the same friction everywhere, on which shots have closed forms. */
export const uniformLane = (friction: number): Surface => zonedLane([{ fromY: 0, friction }]);

/** A dry lane with two frictions that meet at a line across it: closed forms again. */
export const twoZoneLane = (first: number, second: number, atY: number): Surface =>
  zonedLane([
    { fromY: 0, friction: first },
    { fromY: atY, friction: second },
  ]);

/** A dry lane whose friction jumps at lines across it, m from the foul line; the first zone begins before that. */
export const zonedLane = (
  zones: readonly { readonly fromY: number; readonly friction: number }[],
): Surface => ({
  film: null,
  filmEnd: Number.NEGATIVE_INFINITY,
  stretches: zones.map(({ fromY, friction }, i) => ({
    fromY: i === 0 ? Number.NEGATIVE_INFINITY : fromY,
    oiled: friction,
    dry: friction,
    filmScale: 1,
  })),
});
