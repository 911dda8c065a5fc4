import type { Weights } from './worlds-alike.js';

/** For each world the mean of a number over similar worlds, itself left out (Nadaraya, Theory Probab. Appl. 9, 141, 1964). */
export const localMeans = (weights: Weights, values: Float64Array): Float64Array =>
  Float64Array.from(weights, (row) => {
    let sum = 0;
    for (let i = 0; i < values.length; i++) sum += row[i] * values[i];
    return sum;
  });

export function meanOf(values: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i];
  return sum / values.length;
}

/** Values less their mean. */
export function aboutMean(values: Float64Array): Float64Array {
  const mean = meanOf(values);
  return values.map((each) => each - mean);
}
