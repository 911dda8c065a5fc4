import fc from 'fast-check';
import { fromColumns, type Mat3 } from '../../../src/mat3.js';
import { cross, rotateAbout, type Vec3 } from '../../../src/vec3.js';
// for its seed
import '../../arbitraries.js';

/*
 * Numbers, points and turns spread evenly over their range. (`fc.double` spreads bit patterns: half of its
 * numbers between 0 and 1 are below 1e-150, and a direction made of two of them is nearly always the same.)
 */

const STEPS = 2 ** 30;

export const evenly = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: STEPS }).map((i) => min + ((max - min) * i) / STEPS);

/** A point of the cube |x|, |y|, |z| ≤ half. */
export const pointWithin = (half: number): fc.Arbitrary<Vec3> =>
  fc.tuple(evenly(-half, half), evenly(-half, half), evenly(-half, half));

export const anyDirection: fc.Arbitrary<Vec3> = fc
  .tuple(evenly(-1, 1), evenly(0, 2 * Math.PI))
  .map(([z, a]) => [Math.sqrt(1 - z * z) * Math.cos(a), Math.sqrt(1 - z * z) * Math.sin(a), z]);

export const anyTurn: fc.Arbitrary<Mat3> = fc
  .tuple(evenly(-1, 1), evenly(0, 2 * Math.PI), evenly(0, 2 * Math.PI))
  .map(([cosine, a, b]) => {
    const sine = Math.sqrt(1 - cosine * cosine);
    const z: Vec3 = [sine * Math.cos(a), sine * Math.sin(a), cosine];
    const x = rotateAbout([cosine * Math.cos(a), cosine * Math.sin(a), -sine], z, b);
    return fromColumns(x, cross(z, x), z);
  });
