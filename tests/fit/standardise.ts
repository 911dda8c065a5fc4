import type { Tensor } from '../../src/regression/tensor.js';

/** Mean and standard deviation of each column. */
export interface Spread {
  readonly mean: Tensor;
  readonly deviation: Tensor;
}

/** A column that hardly varies counts as varying by this much of its mean, so that nothing is divided by 0. */
const LEAST = 1e-9;

export function spreadOf(rows: Float32Array, width: number): Spread {
  const count = rows.length / width;
  const mean = new Float32Array(width);
  const deviation = new Float32Array(width);
  for (let j = 0; j < width; j++) {
    let sum = 0;
    for (let i = 0; i < count; i++) sum += rows[width * i + j];
    mean[j] = sum / count;
    let squares = 0;
    for (let i = 0; i < count; i++) squares += (rows[width * i + j] - mean[j]) ** 2;
    deviation[j] = Math.max(Math.sqrt(squares / count), LEAST * (1 + Math.abs(mean[j])));
  }
  return { mean: { dims: [width], values: mean }, deviation: { dims: [width], values: deviation } };
}

/** Rows less their columns' means, over their deviations. */
export function standardised(rows: Float32Array, { mean, deviation }: Spread): Float32Array {
  const width = mean.values.length;
  return rows.map((value, i) => (value - mean.values[i % width]) / deviation.values[i % width]);
}
