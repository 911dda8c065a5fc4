import { workerData } from 'piscina';
import { type MixedTrial, outcomeOf, type Trial } from './evaluator.js';
import type { ShotProblem } from './shot-problem.js';
import { type Outcome, type Simulator, simulator } from './simulator.js';

/** Entry of a worker thread: one problem for its whole life, trials as they come. */
const problem = workerData as ShotProblem;
const engine: Simulator = simulator(problem);

export function runTrials(trials: readonly (Trial | MixedTrial)[]): Outcome[] {
  return trials.map((trial) => outcomeOf(engine, problem, trial));
}

// the worker pool calls a module's default export
export default runTrials;
