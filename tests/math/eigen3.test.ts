import fc from 'fast-check';
import { expect, test } from 'vitest';
import { alongAxes, axesAsRows, symmetricEigen } from '../../src/math/eigen3.js';
import { determinant, diagonal, mulVec, rotateTensor, transpose } from '../../src/math/mat3.js';
import { scale, type Vec3 } from '../../src/math/vec3.js';
import { direction, rotation, within } from '../support/arbitraries.js';
import { expectNear } from '../support/expect-near.js';

const moment = within(0.026, 0.03); // kg·m², as of a bowling ball

test('symmetricEigen: finds the moments a tensor was turned from, however near one another', () =>
  fc.assert(
    fc.property(rotation, moment, moment, moment, (R, a, b, c) => {
      const tensor = rotateTensor(R, diagonal([a, b, c]));
      const { values, axes } = symmetricEigen(tensor);
      expectNear(values, [a, b, c].sort((x, y) => x - y) as unknown as Vec3, 1e-16);
      values.forEach((value, i) => {
        expectNear(mulVec(tensor, axes[i]), scale(value, axes[i]), 1e-16);
      });
      expectNear(determinant(axes), 1, 1e-14);
    }),
  ));

test('symmetricEigen: 2, 3 ± √5 for a matrix with that characteristic polynomial', () => {
  // det([[2−x,0,0],[0,5−x,1],[0,1,1−x]]) = (2−x)(x² − 6x + 4)
  const { values } = symmetricEigen([
    [2, 0, 0],
    [0, 5, 1],
    [0, 1, 1],
  ]);
  expectNear(values, [3 - Math.sqrt(5), 2, 3 + Math.sqrt(5)], 4e-15);
});

test('symmetricEigen: three equal moments give them back with a right-handed set of axes', () => {
  const { values, axes } = symmetricEigen(diagonal([0.03, 0.03, 0.03]));
  expect(values).toEqual([0.03, 0.03, 0.03]);
  expect(determinant(axes)).toBe(1);
});

test('alongAxes is undone by the axes themselves', () =>
  fc.assert(
    fc.property(rotation, direction, (R, u) => {
      const eigen = symmetricEigen(rotateTensor(R, diagonal([1, 2, 3])));
      expectNear(mulVec(transpose(axesAsRows(eigen)), alongAxes(eigen, u)), u, 1e-14);
    }),
  ));
