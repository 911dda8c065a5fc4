import { expect, test } from 'vitest';
import { breakpointOf } from '../../../src/motion/reaction/breakpoint.js';
import type { Shot } from '../../../src/motion/shot/shot.js';
import { expectWithin } from '../../support/bodies.js';
import { drawnShot } from '../../support/drawn-shot.js';

/** A path sampled at even times, every 0.4 s, 8 m/s down the lane: how far right it is, and how fast it goes there. */
function pathOf(xAt: (time: number) => number, vxAt: (time: number) => number): Shot {
  const time = Float64Array.from({ length: 6 }, (_, i) => 0.4 * i);
  return drawnShot(time.length, {
    time,
    x: time.map(xAt),
    y: time.map((t) => 8 * t),
    vx: time.map(vxAt),
    vy: time.map(() => 8),
  });
}

// a velocity that is linear in time draws a parabola, so the top is exact
test.each([0.5, 0.75, 0.8, 1.1, 1.9])(
  'a parabola is outermost at its top, at %s s, also between samples',
  (top) => {
    const { x, y } = breakpointOf(
      pathOf(
        (t) => 0.3 - 0.2 * (t - top) ** 2,
        (t) => -0.4 * (t - top),
      ),
    );
    expectWithin(x, 0.3, 1e-15);
    expectWithin(y, 8 * top, 1e-14);
  },
);

test('of several tops the outermost counts, and an end that lies farther out than all', () => {
  const wave = (out: number) =>
    breakpointOf(
      pathOf(
        (t) => 0.1 * Math.cos(Math.PI * t) + out * t,
        (t) => -0.1 * Math.PI * Math.sin(Math.PI * t) + out,
      ),
    );
  expect(wave(0.05)).toEqual({ x: 0.1 * Math.cos(2 * Math.PI) + 0.1, y: 16 });
  expect(wave(-0.3)).toEqual({ x: 0.1, y: 0 });
});
