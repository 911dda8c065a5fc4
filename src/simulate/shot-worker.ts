import { workerData } from 'piscina';
import { deviationsOf, type Trial } from './evaluator.js';
import type { ShotProblem } from './shot-problem.js';
import { type Outcome, type Simulator, simulator } from './simulator.js';

/** Entry of a worker thread: one problem for its whole life, trials as they come. */
const problem = workerData as ShotProblem;
const engine: Simulator = simulator(problem);

export function runTrials(trials: readonly Trial[]): Outcome[] {
  return trials.map((trial) => engine.outcome(trial.layout, deviationsOf(problem, trial), trial.launch));
}

// the worker pool calls a module's default export
export default runTrials;
