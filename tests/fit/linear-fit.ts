import { Matrix } from 'ml-matrix';
import { MultivariateLinearRegression } from 'ml-regression';
import type { Tensor } from '../../src/regression/tensor.js';

/**
 * Multivariate linear regression (least squares, ml-regression) of answers on features, no intercept: both are
 * standardised.
 *
 * @param features  rows of `width` numbers
 * @param answers   as many rows of `depth` numbers
 * @returns one row of weights a feature
 */
export function linearFit(
  features: Float32Array,
  width: number,
  answers: Float32Array,
  depth: number,
): Tensor {
  const { weights } = new MultivariateLinearRegression(matrixOf(features, width), matrixOf(answers, depth), {
    intercept: false,
    statistics: false,
  });
  return { dims: [width, depth], values: Float32Array.from(weights.flat()) };
}

const matrixOf = (values: Float32Array, columns: number): Matrix =>
  Matrix.from1DArray(values.length / columns, columns, Array.from(values));
