import type { Tensor } from './tensor.js';

/** Rows computed together, so that each weight is loaded once for all of them. */
export const TOGETHER = 4;

/** An affine map made ready for many rows: y = x W + b. */
export interface Affine {
  readonly inner: number;
  readonly columns: number;
  /** Column by column. */
  readonly weights: Float64Array;
  readonly bias: Float64Array;
}

/** Prepares an affine map. @param bias  zeros when left out */
export function affine({ dims: [inner, columns], values }: Tensor, bias?: Tensor): Affine {
  const weights = new Float64Array(inner * columns);
  for (let i = 0; i < inner; i++)
    for (let j = 0; j < columns; j++) weights[inner * j + i] = values[columns * i + j];
  return { inner, columns, weights, bias: Float64Array.from(bias?.values ?? new Float64Array(columns)) };
}

/**
 * Writes the images of rows into `out`, row by row, summed in doubles.
 *
 * @param count  of rows, a multiple of `TOGETHER`
 */
export function writeAffine(
  out: Float64Array,
  rows: Float64Array,
  count: number,
  { inner, columns, weights, bias }: Affine,
): void {
  for (let row = 0; row < count; row += TOGETHER) {
    const x = inner * row;
    const y = columns * row;
    for (let j = 0; j < columns; j++) {
      const w = inner * j;
      let [a, b, c, d] = [bias[j], bias[j], bias[j], bias[j]];
      for (let i = 0; i < inner; i++) {
        const weight = weights[w + i];
        a += weight * rows[x + i];
        b += weight * rows[x + inner + i];
        c += weight * rows[x + 2 * inner + i];
        d += weight * rows[x + 3 * inner + i];
      }
      out[y + j] = a;
      out[y + columns + j] = b;
      out[y + 2 * columns + j] = c;
      out[y + 3 * columns + j] = d;
    }
  }
}
