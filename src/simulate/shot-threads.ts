import { type Fingerprint, fingerprint } from '../regression/fingerprint.js';
import { threadPool } from '../threads/thread-pool.js';
import { type AnyTrial, type Evaluator, localEvaluator, outcomeOf } from './evaluator.js';
import type { ShotProblem } from './shot-problem.js';
import type { ShotResult, ShotTask } from './shot-worker.js';
import { type Outcome, simulator } from './simulator.js';

/** Threads that roll shots beside this one. */
export interface ShotThreads {
  /** The physics engine in this thread and in those; the answers are the same as in this one alone, in the same order. */
  evaluator(problem: ShotProblem): Promise<Evaluator>;
  /** What the engine does with the probe shots; where there are threads, one of them has rolled them to warm up. */
  fingerprint(): Promise<Fingerprint>;
  close(): Promise<void>;
}

/** Trials taken up in one go: few enough that no thread waits long for the last ones. */
const SHARE = 8;

/** Shares that a thread has at a time, so that it never waits for this one to hand it the next. */
const AT_ONCE = 2;

/** Starts threads, which make themselves ready while the problem is still prepared. @param count  none is fine */
export function shotThreads(count: number): ShotThreads {
  const threads = Array.from({ length: count }, () =>
    threadPool<ShotTask, ShotResult>(new URL('./shot-worker.js', import.meta.url), 1, AT_ONCE),
  );
  const run = async <T extends ShotResult>(thread: (typeof threads)[number], task: ShotTask): Promise<T> =>
    (await thread.run(task)) as T;
  const probed = threads.map((thread) => run<Fingerprint>(thread, 'fingerprint'));
  for (const each of probed) each.catch(() => undefined); // said when it is asked for
  return {
    async evaluator(problem) {
      if (threads.length === 0) return localEvaluator(problem);
      await Promise.all(threads.map((thread) => run(thread, problem)));
      return sharedEvaluator(
        problem,
        threads.map((thread) => (trials) => run<Outcome[]>(thread, trials)),
      );
    },
    fingerprint: async () => probed[0] ?? fingerprint(),
    close: async () => {
      await Promise.all(threads.map((thread) => thread.close()));
    },
  };
}

/** Trials go to whoever is free, this thread among them. @param others  roll trials in other threads */
function sharedEvaluator(
  problem: ShotProblem,
  others: readonly ((trials: readonly AnyTrial[]) => Promise<readonly Outcome[]>)[],
): Evaluator {
  const engine = simulator(problem);
  const here = async (trials: readonly AnyTrial[]): Promise<readonly Outcome[]> => {
    await new Promise((resume) => setImmediate(resume)); // what the other threads did is taken in first
    return trials.map((trial) => outcomeOf(trial, problem, engine));
  };
  const takers = [here, ...others.flatMap((other) => Array.from({ length: AT_ONCE }, () => other))];
  return {
    async evaluate(trials, onDone) {
      const answers: Outcome[] = [];
      let next = 0;
      const take = async (roll: (typeof takers)[number]): Promise<void> => {
        while (next < trials.length) {
          const from = next;
          next += SHARE;
          const outcomes = await roll(trials.slice(from, from + SHARE));
          for (const [i, outcome] of outcomes.entries()) answers[from + i] = outcome;
          onDone?.(outcomes.length);
        }
      };
      try {
        await Promise.all(takers.map(take));
      } finally {
        next = trials.length; // after a failure none goes on
      }
      return answers;
    },
  };
}
