import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { medianAbsoluteDeviation } from 'simple-statistics';
import type { Tuning } from './reaction-model.js';
import type { Tensor } from './tensor.js';

/** Ridge penalty per shot on the change of a weight, relative to residuals in output scales. */
const HOLD = 3e-4;

/**
 * Residuals are cut off at this many median absolute deviations, so that one unusual shot does not bend the
 * fit for all others.
 */
const FARTHEST = 6;

/**
 * Refits a model's last weights to shots of one problem: ridge regression of the residuals on the
 * basis that the answers are linear in, so that far from those shots the model hardly changes.
 *
 * A few hundred shots of one bowler, ball and lane remove most of the error that a model of all problems has there.
 * Source: Hastie, Tibshirani & Friedman, The Elements of Statistical Learning, 2nd ed., §3.4.1.
 *
 * @param basis      of the shots, row by row
 * @param residuals  observed less answered, in output scales, row by row
 */
export function tune(basis: Tensor, residuals: Tensor): Tuning {
  const [count, width] = basis.dims;
  const depth = residuals.dims[1];
  const means = meansOf(basis);
  const tame = tamed(residuals);
  const offsets = meansOf(tame);
  const x = centred(basis, means);
  const y = centred(tame, offsets);
  const normal = x.transpose().mmul(x);
  for (let j = 0; j < width; j++) normal.set(j, j, normal.get(j, j) + HOLD * count);
  const weights = new CholeskyDecomposition(normal).solve(x.transpose().mmul(y));
  const bias = offsets.map(
    (offset, k) => offset - means.reduce((sum, mean, j) => sum + mean * weights.get(j, k), 0),
  );
  return {
    weights: { dims: [width, depth], values: Float32Array.from(weights.to1DArray()) },
    bias: { dims: [depth], values: Float32Array.from(bias) },
  };
}

function meansOf({ dims: [count, width], values }: Tensor): number[] {
  return Array.from({ length: width }, (_, j) => {
    let sum = 0;
    for (let i = 0; i < count; i++) sum += values[width * i + j];
    return sum / count;
  });
}

function centred({ dims: [count, width], values }: Tensor, means: readonly number[]): Matrix {
  const out = Matrix.zeros(count, width);
  for (let i = 0; i < count; i++)
    for (let j = 0; j < width; j++) out.set(i, j, values[width * i + j] - means[j]);
  return out;
}

function tamed({ dims, values }: Tensor): Tensor {
  const [count, depth] = dims;
  const limits = Array.from({ length: depth }, (_, k) => {
    const column = Array.from({ length: count }, (_, i) => values[depth * i + k]);
    return FARTHEST * medianAbsoluteDeviation(column);
  });
  const limited = values.map((value, i) => Math.max(-limits[i % depth], Math.min(limits[i % depth], value)));
  return { dims, values: limited };
}
