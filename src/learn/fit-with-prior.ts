import { CholeskyDecomposition, Matrix } from 'ml-matrix';

/** A model near one point: what it predicts, and the derivatives with respect to each unknown. */
export interface Linear {
  readonly predicted: Float64Array;
  /** One row for each observation. */
  readonly jacobian: readonly Float64Array[];
}

/** The observations, and the covariance of their errors. Both may depend on the point, where missing observations are filled in. */
export interface Observed {
  readonly values: Float64Array;
  readonly noise: Matrix;
}

/** A model whose unknowns are standard normal in the prior. */
export interface ModelWithPrior<L extends Linear> {
  readonly unknowns: number;
  linearise(u: Float64Array): L;
  /** Predictions at a point near `near`, where the model was linearised. */
  predict(u: Float64Array, near: L): Float64Array;
  observed(near: L): Observed;
}

/** Posterior of the unknowns: normal, with this mean and covariance. */
export interface Fit<L extends Linear> {
  readonly mean: Float64Array;
  readonly covariance: Matrix;
  readonly near: L;
  readonly jacobian: Matrix;
  readonly observed: Observed;
  /** Observations less their prior expectation, by the model linearised near the mean. */
  readonly surprise: Matrix;
  /** Inverse of the prior covariance of the surprises. */
  readonly precision: Matrix;
  /** Whether the steps converged. */
  readonly isSettled: boolean;
}

const MOST_STEPS = 6;

/** A step that lowers the sum of squared deviations by less than this ends the fit: it would change no prediction noticeably. */
const SETTLED = 0.05;

const MOST_HALVINGS = 3;

/**
 * Posterior of the unknowns: Gauss–Newton to its mode, and there Laplace's normal approximation
 * (Tarantola, Inverse Problem Theory, SIAM 2005, §3.4; from memory).
 *
 * For a linear model one step is exact. A step that fits worse is halved, up to three times.
 */
export function fitWithPrior<L extends Linear>(model: ModelWithPrior<L>): Fit<L> {
  let u = new Float64Array(model.unknowns);
  let near = model.linearise(u);
  let observed = model.observed(near);
  let isSettled = false;
  for (let step = 0; step < MOST_STEPS && !isSettled; step++) {
    const { values, noise } = observed;
    const inverse = new CholeskyDecomposition(noise);
    const costOf = (point: Float64Array, predicted: Float64Array): number => {
      const off = Matrix.columnVector(values.map((value, i) => value - predicted[i]));
      return off.transpose().mmul(inverse.solve(off)).get(0, 0) + dot(point, point);
    };
    const cost = costOf(u, near.predicted);
    let next = solve(u, near, observed).mean;
    let nextCost = costOf(next, model.predict(next, near));
    for (let half = 0; half < MOST_HALVINGS && !(nextCost <= cost); half++) {
      next = next.map((each, i) => (each + u[i]) / 2);
      nextCost = costOf(next, model.predict(next, near));
    }
    isSettled = !(nextCost < cost - SETTLED);
    if (isSettled) break; // as good as it gets with these slopes
    u = next;
    near = model.linearise(u);
    observed = model.observed(near);
  }
  return { ...solve(u, near, observed), mean: u, near, observed, isSettled };
}

const dot = (a: Float64Array, b: Float64Array): number => a.reduce((sum, each, i) => sum + each * b[i], 0);

/** A matrix that is symmetric but for rounding, made exactly so, in place. */
export const symmetric = (matrix: Matrix): Matrix => matrix.add(matrix.transpose()).mul(0.5);

/** Posterior of the model linearised at `u`. */
function solve(u: Float64Array, { predicted, jacobian: rows }: Linear, { values, noise }: Observed) {
  const jacobian = new Matrix(rows.map((row) => Array.from(row)));
  const surprise = Matrix.columnVector(values.map((value, i) => value - predicted[i] + dot(rows[i], u)));
  const cholesky = new CholeskyDecomposition(symmetric(jacobian.mmul(jacobian.transpose()).add(noise)));
  const precision = cholesky.solve(Matrix.eye(values.length));
  const gain = jacobian.transpose().mmul(precision);
  return {
    mean: Float64Array.from(gain.mmul(surprise).to1DArray()),
    covariance: symmetric(Matrix.eye(u.length).sub(gain.mmul(jacobian))),
    jacobian,
    surprise,
    precision,
  };
}
