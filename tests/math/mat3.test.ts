import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  addMat,
  column,
  determinant,
  diagonal,
  fromColumns,
  IDENTITY,
  inverse,
  type Mat3,
  mulMat,
  mulVec,
  outer,
  rotateTensor,
  scaleMat,
  subMat,
  trace,
  transpose,
} from '../../src/math/mat3.js';
import { point, rotation } from '../support/arbitraries.js';
import { expectNear } from '../support/expect-near.js';

const M: Mat3 = [
  [2, -1, 0],
  [1, 3, 5],
  [-2, 0, 4],
];

test('determinant and inverse of a matrix worked out by hand', () => {
  // expansion along the first row: 2·(3·4 − 5·0) + 1·(1·4 + 5·2) = 38
  expect(determinant(M)).toBe(38);
  const adjugate: Mat3 = [
    [12, 4, -5],
    [-14, 8, -10],
    [6, 2, 7],
  ];
  expectNear(inverse(M), scaleMat(1 / 38, adjugate), 1e-16);
  expectNear(mulMat(M, inverse(M)), IDENTITY, 1e-15);
});

test('inverse: a singular matrix gives no finite numbers', () =>
  expect(
    inverse(outer([1, 2, 3], [1, 0, 1]))
      .flat()
      .every(Number.isFinite),
  ).toBe(false));

test('fromColumns, column and transpose agree on what a column is', () => {
  const m = fromColumns([1, 2, 3], [4, 5, 6], [7, 8, 9]);
  expect(column(m, 1)).toEqual([4, 5, 6]);
  expect(mulVec(m, [0, 1, 0])).toEqual([4, 5, 6]);
  expect(transpose(m)).toEqual([
    [1, 2, 3],
    [4, 5, 6],
    [7, 8, 9],
  ]);
});

test('addMat, subMat, scaleMat and diagonal are entry by entry', () => {
  expect(addMat(M, IDENTITY).flat()).toEqual([3, -1, 0, 1, 4, 5, -2, 0, 5]);
  expect(subMat(M, IDENTITY).flat()).toEqual([1, -1, 0, 1, 2, 5, -2, 0, 3]);
  expect(scaleMat(2, M).flat()).toEqual([4, -2, 0, 2, 6, 10, -4, 0, 8]);
  expect(mulVec(diagonal([1, 2, 3]), [1, 1, 1])).toEqual([1, 2, 3]);
});

test('rotateTensor: components follow the axes, and trace and determinant stay', () =>
  fc.assert(
    fc.property(rotation, point, (R_AB, u_B) => {
      expectNear(rotateTensor(R_AB, outer(u_B, u_B)), outer(mulVec(R_AB, u_B), mulVec(R_AB, u_B)), 1e-13);
      const turned = rotateTensor(R_AB, M);
      expectNear([trace(turned), determinant(turned)], [9, 38], 1e-12);
    }),
  ));
