import fc from 'fast-check';
import { SHAPE_DIMENSIONS, startingShape } from '../../src/ball/core/core-families.js';
import type { BallBody } from '../../src/ball/drill/ball-body.js';
import { within } from './arbitraries.js';
import { RADIUS } from './balls.js';

const share = within(0, 0.999);
/** Balls of every family, with any core that fits inside the cover. */
export const anyBody: fc.Arbitrary<BallBody> = fc
  .tuple(
    fc.constantFrom('plain' as const, 'lobed' as const, 'asymmetric' as const),
    fc.array(share, { minLength: SHAPE_DIMENSIONS, maxLength: SHAPE_DIMENSIONS }),
    within(600, 1400),
  )
  .map(([family, u, fillerDensity]) => ({
    radius: RADIUS,
    fillerDensity,
    coverThickness: 0.02,
    coverDensity: 1180,
    core: startingShape(family, u),
  }));
