import { CholeskyDecomposition, Matrix } from 'ml-matrix';

/** A model at one point: what it predicts, and how that moves with each unknown. */
export interface Linear {
  readonly predicted: Float64Array;
  /** Row by row of what is observed. */
  readonly jacobian: readonly Float64Array[];
}

/** What is observed, and the covariance of its errors; both may depend on the point, as far as what is missing is filled in there. */
export interface Observed {
  readonly values: Float64Array;
  readonly noise: Matrix;
}

/** A model with unknowns that are standard normal beforehand. */
export interface ModelWithPrior<L extends Linear> {
  readonly unknowns: number;
  linearise(u: Float64Array): L;
  /** What it predicts near where it was linearised. */
  predict(u: Float64Array, near: L): Float64Array;
  observed(near: L): Observed;
}

/** What observations say of the unknowns: normal, with this mean and covariance. */
export interface Fit<L extends Linear> {
  readonly mean: Float64Array;
  readonly covariance: Matrix;
  readonly near: L;
  readonly jacobian: Matrix;
  readonly observed: Observed;
  /** What was observed less what is expected beforehand, by the model as it is near the mean. */
  readonly surprise: Matrix;
  /** Inverse of the covariance that surprises have beforehand. */
  readonly precision: Matrix;
  /** Whether the steps came to rest. */
  readonly isSettled: boolean;
}

const STEPS = 6;

/** Steps that fit no better than by this, in squared deviations, matter to no prediction. */
const SETTLED = 0.05;

const HALVINGS = 3;

/**
 * Finds the most likely unknowns and how sure they are: Gauss–Newton, and Laplace's normal distribution about where it comes to rest
 * (Tarantola, Inverse Problem Theory, SIAM 2005, §3.4; from memory).
 *
 * Where the model is linear one step is exact. A step that fits worse is halved.
 */
export function fitWithPrior<L extends Linear>(model: ModelWithPrior<L>): Fit<L> {
  let u = new Float64Array(model.unknowns);
  let near = model.linearise(u);
  let observed = model.observed(near);
  let isSettled = false;
  for (let step = 0; step < STEPS && !isSettled; step++) {
    const { values, noise } = observed;
    const inverse = new CholeskyDecomposition(noise);
    const costOf = (point: Float64Array, predicted: Float64Array): number => {
      const off = Matrix.columnVector(values.map((value, i) => value - predicted[i]));
      return off.transpose().mmul(inverse.solve(off)).get(0, 0) + dot(point, point);
    };
    const cost = costOf(u, near.predicted);
    let next = solve(u, near, observed).mean;
    let nextCost = costOf(next, model.predict(next, near));
    for (let half = 0; half < HALVINGS && !(nextCost <= cost); half++) {
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

/** Without what rounding made of it. */
const symmetric = (matrix: Matrix): Matrix => matrix.add(matrix.transpose()).mul(0.5);

/** The step of linear algebra: exact where the model is linear. */
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
