import { type Fingerprint, fingerprint } from '../regression/fingerprint.js';
import { outcomeOf } from './evaluator.js';
import { type RolledShare, type SharedTrials, takeShare } from './shares.js';
import type { ShotProblem } from './shot-problem.js';
import { type Simulator, simulator } from './simulator.js';

/** A task for a thread: roll the probe shots, make ready for a problem, or roll trials of that problem. */
export type ShotTask = 'fingerprint' | ShotProblem | SharedTrials;
export type ShotResult = Fingerprint | null | readonly RolledShare[];

/** The problem that this thread was made ready for. A thread works on one problem only. */
const ready: { for?: { readonly problem: ShotProblem; readonly engine: Simulator } } = {};

/** Entry of a worker thread: tasks as they come. */
export function workOn(task: ShotTask): ShotResult {
  if (task === 'fingerprint') return fingerprint();
  if ('worlds' in task) {
    ready.for = { problem: task, engine: simulator(task) };
    return null;
  }
  const { problem, engine } = ready.for!; // the problem comes before any trial
  const rolled: RolledShare[] = [];
  for (;;) {
    const share = takeShare(task, (trial) => outcomeOf(trial, problem, engine));
    if (!share) return rolled;
    rolled.push(share);
  }
}

// the worker pool calls a module's default export
export default workOn;
