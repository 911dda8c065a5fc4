import { quantile, rootMeanSquare, rSquared } from 'simple-statistics';

/** How far answers lie from what the physics engine does, in the unit people read the number in. */
export interface Errors {
  readonly r2: number;
  readonly rmse: number;
  readonly p95: number;
  readonly worst: number;
}

export function errorsOf(answered: readonly number[], observed: readonly number[]): Errors {
  const off = observed.map((value, i) => Math.abs(answered[i] - value));
  return {
    r2: rSquared(
      observed.map((value, i) => [answered[i], value]),
      (answer) => answer,
    ),
    rmse: rootMeanSquare(off),
    p95: quantile(off, 0.95),
    worst: off.reduce((a, b) => Math.max(a, b), 0),
  };
}
