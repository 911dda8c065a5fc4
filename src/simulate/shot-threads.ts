import { setImmediate as nextTurn } from 'node:timers/promises';
import { type Fingerprint, fingerprint } from '../regression/fingerprint.js';
import { type Evaluator, localEvaluator, outcomeOf } from './evaluator.js';
import { type RolledShare, SHARE, type SharedTrials, takeShare } from './shares.js';
import type { ShotProblem } from './shot-problem.js';
import { type Outcome, simulator } from './simulator.js';
import type { StartedThread } from './started-threads.js';

/** This thread and others that roll shots. */
export interface ShotThreads {
  /** The physics engine in all threads; outcomes and their order are the same as in this thread alone. */
  evaluator(problem: ShotProblem): Evaluator;
  /** What the engine does with the probe shots; where there are threads, one of them has rolled them. */
  fingerprint(): Promise<Fingerprint>;
}

/** @param threads  may be empty */
export const shotThreads = (threads: readonly StartedThread[]): ShotThreads => ({
  evaluator(problem) {
    if (threads.length === 0) return localEvaluator(problem);
    const ready = Promise.all(threads.map(({ run }) => run<null>(problem)));
    ready.catch(() => undefined); // a failure is reported with the first shots
    return sharedEvaluator(
      problem,
      threads.map(({ run }) => async (task) => {
        await ready;
        return run<readonly RolledShare[]>(task);
      }),
    );
  },
  fingerprint: async () => threads[0]?.probed ?? fingerprint(),
});

/** Trials go to any thread that is free, including this one. @param others  take shares of trials in other threads */
function sharedEvaluator(
  problem: ShotProblem,
  others: readonly ((task: SharedTrials) => Promise<readonly RolledShare[]>)[],
): Evaluator {
  const engine = simulator(problem);
  return {
    async evaluate(trials, onDone) {
      const outcomes: Outcome[] = [];
      const keep = ({ from, outcomes: rolled }: RolledShare): void => {
        for (const [i, outcome] of rolled.entries()) outcomes[from + i] = outcome;
        onDone?.(rolled.length);
      };
      const taken = new Int32Array(new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT));
      const here = async (): Promise<void> => {
        for (;;) {
          await nextTurn(); // lets keys, ctrl-C and the progress bar through
          const share = takeShare({ trials, taken }, (trial) => outcomeOf(trial, problem, engine));
          if (!share) return;
          keep(share);
        }
      };
      const beside = trials.length > SHARE ? others : [];
      try {
        await Promise.all([
          ...beside.map(async (take) => (await take({ trials, taken })).forEach(keep)),
          here(),
        ]);
      } finally {
        Atomics.store(taken, 0, trials.length); // after a failure no thread goes on
      }
      return outcomes;
    },
  };
}
