/** A tensor of 32-bit floats, row by row. */
export interface Tensor {
  readonly dims: readonly number[];
  readonly values: Float32Array;
}
