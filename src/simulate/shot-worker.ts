import { type Fingerprint, fingerprint } from '../regression/fingerprint.js';
import { type AnyTrial, outcomeOf } from './evaluator.js';
import type { ShotProblem } from './shot-problem.js';
import { type Outcome, type Simulator, simulator } from './simulator.js';

/** What a thread is asked: what its engine does with the probe shots; to make ready for a problem; to roll trials of that. */
export type ShotTask = 'fingerprint' | ShotProblem | readonly AnyTrial[];
export type ShotResult = Fingerprint | readonly Outcome[] | null;

/** What this thread, which works on one problem all its life, was made ready for. */
const ready: { for?: { readonly problem: ShotProblem; readonly engine: Simulator } } = {};

/** Entry of a worker thread: tasks as they come. */
export function workOn(task: ShotTask): ShotResult {
  if (task === 'fingerprint') return fingerprint();
  if ('worlds' in task) {
    ready.for = { problem: task, engine: simulator(task) };
    return null;
  }
  const { problem, engine } = ready.for!; // told before any trial
  return task.map((trial) => outcomeOf(trial, problem, engine));
}

// the worker pool calls a module's default export
export default workOn;
