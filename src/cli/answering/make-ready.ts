import { setImmediate as nextTurn } from 'node:timers/promises';
import type { CoreFitter } from '../../prepare/fit-cores.js';
import type { SharedRegression } from '../../regression/open-regression.js';
import type { RecommendInputs } from '../../simulate/setting.js';
import type { Terminal } from '../terminal/terminal.js';

/** What an answer needs whatever is asked of it: it can be made ready while a person still answers questions. */
export interface MadeReady {
  readonly fitter: CoreFitter;
  readonly regression: SharedRegression;
}

/**
 * Loads the engine, opens the regression and fits a ball's cores, a step at a time, so that keys are heard between the steps.
 *
 * @returns what the answer is then to use; a ball that cannot be is refused there, not here
 */
export async function makeReady(
  { bowler, ball }: Pick<RecommendInputs, 'bowler' | 'ball'>,
  terminal: Terminal,
): Promise<MadeReady> {
  const { sharedFits } = await import('../../prepare/shared-fits.js');
  const { shareRegression } = await import('../../regression/open-regression.js');
  const ready = { fitter: sharedFits(), regression: shareRegression() };
  await nextTurn();
  const { ballProblem } = await import('../../prepare/ball-problem.js');
  try {
    ballProblem(ball, bowler, 'moment', ready.fitter, terminal.budget);
  } catch {
    // the answer says what is wrong
  }
  await nextTurn();
  await import('../../answer/recommend.js');
  await nextTurn();
  await ready.regression.open();
  await import('../../report/screens/recommendation-report.js');
  return ready;
}
