import type { ballProblem } from '../prepare/ball-problem.js';
import type { CoreFitter } from '../prepare/fit-cores.js';
import { sharedBalls } from '../prepare/shared-balls.js';
import { sharedFits } from '../prepare/shared-fits.js';
import { type SharedRegression, shareRegression } from '../regression/open-regression.js';

/** What pairs that are worked out one after the other share: a ball's cores, a bowler's drilled balls, and the regression. */
export interface PairsShare {
  readonly fitter: CoreFitter;
  readonly readyBall: typeof ballProblem;
  readonly regression: SharedRegression;
}

export const pairsShare = (): PairsShare => ({
  fitter: sharedFits(),
  readyBall: sharedBalls(),
  regression: shareRegression(),
});
