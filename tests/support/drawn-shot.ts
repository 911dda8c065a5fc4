import { ZERO } from '../../src/math/vec3.js';
import { emptySamples } from '../../src/motion/shot/samples.js';
import type { Shot } from '../../src/motion/shot/shot.js';

/** A shot that no ball rolled: of so many samples, what is drawn in place of noughts. */
export const drawnShot = (count: number, drawn: Partial<Shot> = {}): Shot => ({
  ...emptySamples(count),
  outcome: 'pins',
  launch: { x: 0, angle: 0 },
  steps: count,
  rollStart: -1,
  endAxis_W: ZERO,
  rollHeading: 0,
  ...drawn,
});

/** A shot that ends so far to the right, m. */
export const endingAt = (x: number, outcome: Shot['outcome'] = 'pins'): Shot =>
  drawnShot(2, { outcome, x: Float64Array.of(0, x) });
