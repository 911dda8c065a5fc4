import fc from 'fast-check';
import type { UnitShape } from '../../src/ball/solid/part.js';
import { fromColumns, type Mat3 } from '../../src/math/mat3.js';
import { cross, rotateAbout, unit, type Vec3 } from '../../src/math/vec3.js';

// one seed, so that a run can be repeated
fc.configureGlobal({ seed: 4297 });

const STEPS = 2 ** 30;

/** Any number of a range, evenly. (`fc.double` spreads bit patterns: half of its numbers between 0 and 1 are below 1e-150.) */
export const within = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: STEPS }).map((i) => min + ((max - min) * i) / STEPS);

/** An angle of up to a full turn either way, rad. */
export const turn = within(-2 * Math.PI, 2 * Math.PI);

/** A point of the cube |x|, |y|, |z| ≤ half. */
export const pointWithin = (half: number): fc.Arbitrary<Vec3> =>
  fc.tuple(within(-half, half), within(-half, half), within(-half, half));

export const point = pointWithin(2);

/** A unit vector, the poles included. */
export const direction: fc.Arbitrary<Vec3> = fc
  .tuple(within(-1, 1), turn)
  .map(([z, a]) => [Math.sqrt(1 - z * z) * Math.cos(a), Math.sqrt(1 - z * z) * Math.sin(a), z]);

/** A rotation matrix: any third axis, turned about itself. */
export const rotation: fc.Arbitrary<Mat3> = fc.tuple(direction, turn).map(([z, a]) => {
  const across: Vec3 = Math.abs(z[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0];
  const x = rotateAbout(unit(cross(z, across)), z, a);
  return fromColumns(x, cross(z, x), z);
});

/** One of each kind of shape that a core's parts have. */
export const unitShape = fc.constantFrom<UnitShape>(
  { kind: 'ball' },
  { kind: 'cylinder' },
  { kind: 'box' },
  { kind: 'cone', top: 0.4 },
  { kind: 'capsule', half: 0.7 },
);
