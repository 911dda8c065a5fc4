import type { Tensor } from '../../src/regression/tensor.js';
import type { Network } from '../fit/network.js';

/** A made-up network of three inputs, four and five hidden units and two answers; every number by a formula. */
export const smallNetwork = (): Network => ({
  inputMean: { dims: [3], values: Float32Array.of(7, -2, 0.35) },
  inputRate: { dims: [3], values: Float32Array.of(0.5, 2, 40) },
  outputMean: { dims: [2], values: Float32Array.of(12, -0.5) },
  outputScale: { dims: [2], values: Float32Array.of(3, 0.02) },
  hidden: [
    { weights: wave(3, 4, 1), bias: { dims: [4], values: wave(1, 4, 2).values } },
    { weights: wave(4, 5, 3), bias: { dims: [5], values: wave(1, 5, 4).values } },
  ],
  sums: wave(3, 6, 8),
  squares: wave(6, 2, 9),
  linear: { weights: wave(3, 2, 5), bias: { dims: [2], values: wave(1, 2, 6).values } },
  last: wave(5, 2, 7),
});

/** Numbers its answers are linear in: features, squares, last layer. */
export const SMALL_BASIS = 3 + 6 + 5;

function wave(rows: number, columns: number, phase: number): Tensor {
  return {
    dims: [rows, columns],
    values: Float32Array.from({ length: rows * columns }, (_, i) => 0.7 * Math.sin(1.3 * i + phase)),
  };
}

/** Features of a few made-up shots, row by row. */
export const smallRows = (count: number): Tensor => ({
  dims: [count, 3],
  values: Float32Array.from({ length: 3 * count }, (_, i) =>
    i % 3 === 2 ? 0.35 + 0.02 * Math.cos(i) : 5 * Math.sin(i),
  ),
});
