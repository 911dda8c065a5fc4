import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { meanSimple } from 'simple-statistics';
import { exp } from '../../math/exp.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import { layoutsApart } from '../candidates/pick-differing.js';

/** A value known at a layout, but for luck. */
export interface KnownValue {
  readonly layout: LayoutNumbers;
  readonly value: number;
  /** Variance of the luck in it. */
  readonly variance: number;
}

/** Distance, in `layoutsApart`, over which what a layout does is alike. */
const REACH = 1;

/** Share of the values' variance that does not hang together even between neighbours. */
const ROUGHNESS = 0.02;

/**
 * Smooths values over layouts and tells them in between, by simple kriging about their mean.
 *
 * Near what is known well it is that; near what is known badly it leans on the neighbours; far from all it is the mean.
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
