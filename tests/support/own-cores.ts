import fc from 'fast-check';
import type { DenseSolid, OwnCore } from '../../src/ball/core/own-body.js';
import type { Part, UnitShape } from '../../src/ball/solid/part.js';
import { from, POUND } from '../../src/base/units.js';
import { type Mat3, mulMat } from '../../src/math/mat3.js';
import type { Vec3 } from '../../src/math/vec3.js';
import { rotation, within } from './arbitraries.js';

/* Invented cores of the tests, as their designers would know them. */

/** Weight of the balls around them, kg. */
export const MASS = from(15, POUND);

const COVER = { coverThickness: 0.02, coverDensity: 1180 };

export const coreOf = (...solids: DenseSolid[]): OwnCore => ({ ...COVER, solids });

export const dense = (shape: UnitShape, A: Mat3, c: Vec3, density: number): DenseSolid & Part => ({
  shape,
  A,
  c,
  density,
  excess: density,
});

const shape = fc.oneof(
  fc.constantFrom<UnitShape>({ kind: 'ball' }, { kind: 'cylinder' }, { kind: 'box' }),
  within(0.2, 1.2).map((top): UnitShape => ({ kind: 'cone', top })),
  within(0.2, 1).map((half): UnitShape => ({ kind: 'capsule', half })),
);

const half = within(0.012, 0.028);
const offset = within(-0.015, 0.015);

/** A solid somewhere near the ball's centre, turned at random: any two of them share space. */
export const solid = fc
  .tuple(shape, rotation, half, half, half, offset, offset, offset, within(900, 3500))
  .map(([kind, R, a, b, c, x, y, z, density]) =>
    dense(
      kind,
      mulMat(R, [
        [a, 0, 0],
        [0, b, 0],
        [0, 0, c],
      ]),
      [x, y, z],
      density,
    ),
  );
