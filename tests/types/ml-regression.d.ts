/* What is used of ml-regression, which comes without types. */
declare module 'ml-regression' {
  import type { AbstractMatrix } from 'ml-matrix';

  /** Least squares for several answers at once: y = x·weights, one row of weights an input. */
  export class MultivariateLinearRegression {
    constructor(
      x: number[][] | AbstractMatrix,
      y: number[][] | AbstractMatrix,
      options?: { intercept?: boolean; statistics?: boolean },
    );
    readonly weights: number[][];
  }
}
