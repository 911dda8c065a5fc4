import { expect, test } from 'vitest';
import { breakpointOf } from '../../../src/motion/reaction/breakpoint.js';
import type { Shot } from '../../../src/motion/shot/shot.js';
import { expectWithin } from '../../support/bodies.js';
import { drawnShot } from '../../support/drawn-shot.js';

/** A path sampled every 5 ms for two seconds, 8 m/s down the lane: how far right it is, and how fast it goes there; a turn every 0.7 m. */
function pathOf(xAt: (time: number) => number, vxAt: (time: number) => number): Shot {
  const time = Float64Array.from({ length: 401 }, (_, i) => 0.005 * i);
  return drawnShot(time.length, {
    time,
    x: time.map(xAt),
    y: time.map((t) => 8 * t),
    vx: time.map(vxAt),
    vy: time.map(() => 8),
    phase: time.map((t) => (2 * Math.PI * 8 * t) / 0.7),
    launch: { x: xAt(0), angle: Math.atan(vxAt(0) / 8) },
  });
}

// a velocity that is linear in time draws a parabola, so the top is exact, and so is its place on chords, but for those that begin between samples
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
    expectWithin(y, 8 * top, 1e-3);
  },
);

test('of several tops the outermost counts, and an end that lies farther out than all', () => {
  const wave = (out: number) =>
    breakpointOf(
      pathOf(
        (t) => 0.1 * Math.sin(3 * Math.PI * t) + out * t,
        (t) => 0.3 * Math.PI * Math.cos(3 * Math.PI * t) + out,
      ),
    );
  const top = (out: number, n: number) =>
    (Math.acos(-out / (0.3 * Math.PI)) + 2 * Math.PI * n) / (3 * Math.PI);
  for (const [out, n] of [
    [0.05, 2],
    [-0.05, 0],
  ] as const) {
    // biome-ignore format: one a line
    const { x, y } = wave(out);
    expectWithin(x, 0.1 * Math.sin(3 * Math.PI * top(out, n)) + out * top(out, n), 1e-6);
    expectWithin(y, 8 * top(out, n), 0.01);
  }
  expect(wave(2).y).toBe(16);
  expectWithin(wave(2).x, 4, 1e-12);
  expect(wave(-3)).toEqual({ x: 0, y: 0 });
});

test('a sway of half a millimetre once a turn does not move the place where the path is outermost', () => {
  const rate = (2 * Math.PI * 8) / 0.7;
  const places = Array.from({ length: 24 }, (_, i) => {
    const from = (2 * Math.PI * i) / 24;
    return breakpointOf(
      pathOf(
        (t) => 0.3 - 0.1 * (t - 1.2) ** 2 + 0.0005 * (Math.sin(rate * t + from) - Math.sin(from)),
        (t) => -0.2 * (t - 1.2) + 0.0005 * rate * Math.cos(rate * t + from),
      ),
    ).y;
  });
  for (const place of places) expectWithin(place, 8 * 1.2, 0.02);
});
