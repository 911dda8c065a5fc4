import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { meanSimple } from 'simple-statistics';
import { exp } from '../../math/exp.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import { layoutsApart } from '../candidates/pick-differing.js';

/** A value known at a layout, with some error by luck. */
export interface KnownValue {
  readonly layout: LayoutNumbers;
  readonly value: number;
  /** Variance of that error. */
  readonly variance: number;
}

/** Correlation length, in `layoutsApart`. */
const REACH = 1;

/** Share of the values' variance that is uncorrelated even between neighbours (the nugget). */
const ROUGHNESS = 0.02;

/**
 * Smooths values over layouts and interpolates them, by simple kriging about their mean.
 *
 * Near a layout with a well-known value the result is that value, near one with a poorly known value it depends more on the neighbours,
 * and far from all it is the mean.
 * Source: Rasmussen & Williams, Gaussian Processes for Machine Learning, eq. 2.25, with a Gaussian covariance.
 *
 * @param known  at least one, no layout twice
 */
export function krige(known: readonly KnownValue[]): (layout: LayoutNumbers) => number {
  const mean = meanSimple(known.map(({ value }) => value));
  const spread = meanSimple(known.map(({ value }) => (value - mean) ** 2));
  const rough = ROUGHNESS * spread + Number.EPSILON;
  const between = (a: LayoutNumbers, b: LayoutNumbers): number =>
    spread * exp(-(layoutsApart(a, b) ** 2) / (2 * REACH ** 2));
  const covariance = new Matrix(
    known.map((a, i) =>
      known.map((b, j) => between(a.layout, b.layout) + (i === j ? a.variance + rough : 0)),
    ),
  );
  const weights = new CholeskyDecomposition(covariance)
    .solve(Matrix.columnVector(known.map(({ value }) => value - mean)))
    .to1DArray();
  return (layout) => known.reduce((sum, each, i) => sum + weights[i] * between(each.layout, layout), mean);
}
