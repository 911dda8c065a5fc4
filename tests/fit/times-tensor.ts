import type { Tensor } from '../../src/regression/tensor.js';

/** Matrix product of two tensors of two dimensions, summed in doubles. */
export function timesTensor(a: Tensor, b: Tensor): Tensor {
  const [rows, inner] = a.dims;
  const [, columns] = b.dims;
  const values = new Float32Array(rows * columns);
  const sum = new Float64Array(columns);
  for (let i = 0; i < rows; i++) {
    sum.fill(0);
    for (let k = 0; k < inner; k++) {
      const factor = a.values[inner * i + k];
      for (let j = 0; j < columns; j++) sum[j] += factor * b.values[columns * k + j];
    }
    values.set(sum, columns * i);
  }
  return { dims: [rows, columns], values };
}
