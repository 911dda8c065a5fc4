import { Matrix, pseudoInverse } from 'ml-matrix';
import type { Layout } from '../layout/layout.js';
import { placeLayout } from '../layout/placement.js';
import type { Vec3 } from '../math/vec3.js';

/**
 * Size of the basis: all products of up to two components of the two directions that a layout sets, to the pin and toward the marker.
 * What a layout does to a ball is smooth in them: the turned tensor of a core is exactly of second degree, and what the holes take away
 * nearly so.
 */
const BASIS_SIZE = 28; // a multiple of four: see `applyFit`

/** Writes a layout's products of up to two components of those directions, 1 included. */
function writeLayoutBasis(out: Float64Array, at: number, layout: Layout, pap_B: Vec3): void {
  const { R_BC } = placeLayout(layout, pap_B);
  const one = [1, R_BC[0][2], R_BC[1][2], R_BC[2][2], R_BC[0][0], R_BC[1][0], R_BC[2][0]];
  let k = at;
  for (let i = 0; i < one.length; i++) for (let j = i; j < one.length; j++) out[k++] = one[i] * one[j];
}

/** The basis of several layouts, row by row. */
export function layoutBasis(layouts: readonly Layout[], pap_B: Vec3): Float64Array {
  const out = new Float64Array(BASIS_SIZE * layouts.length);
  for (const [i, layout] of layouts.entries()) writeLayoutBasis(out, BASIS_SIZE * i, layout, pap_B);
  return out;
}

/** Values, a row of `depth` numbers for each layout ↦ weights, a row for each product of the basis. */
export type LayoutFit = (values: Float64Array, depth: number) => Float64Array;

/**
 * Prepares least squares on the basis, to be used for any numbers known for the same layouts. Some products depend on
 * others, so the weights of least norm are taken (pseudoinverse).
 */
export function layoutFit(basis: Float64Array): LayoutFit {
  const count = basis.length / BASIS_SIZE;
  const inverse = pseudoInverse(Matrix.from1DArray(count, BASIS_SIZE, Array.from(basis)));
  return (values, depth) =>
    Float64Array.from(inverse.mmul(Matrix.from1DArray(count, depth, Array.from(values))).to1DArray());
}

/** Basis rows ↦ a number for each, fitted to the numbers known for the layouts that the fit was prepared for. */
export function fittedNumber(
  known: readonly number[],
  fitOver: LayoutFit,
): (basis: Float64Array) => Float64Array {
  const weights = fitOver(Float64Array.from(known), 1);
  return (basis) => {
    const numbers = new Float64Array(basis.length / BASIS_SIZE);
    for (let i = 0; i < numbers.length; i++) applyFit(numbers, i, basis, i, weights, 1);
    return numbers;
  };
}

/** Writes row `row` of a basis times weights into `out`, from `at` on. */
export function applyFit(
  out: Float64Array,
  at: number,
  basis: Float64Array,
  row: number,
  weights: Float64Array,
  depth: number,
): void {
  const from = BASIS_SIZE * row;
  for (let j = 0; j < depth; j++) {
    let a = 0; // four independent sums, which the processor can run side by side
    let b = 0;
    let c = 0;
    let d = 0;
    for (let k = 0; k < BASIS_SIZE; k += 4) {
      const weight = depth * k + j;
      a += basis[from + k] * weights[weight];
      b += basis[from + k + 1] * weights[weight + depth];
      c += basis[from + k + 2] * weights[weight + 2 * depth];
      d += basis[from + k + 3] * weights[weight + 3 * depth];
    }
    out[at + j] = a + b + (c + d);
  }
}
