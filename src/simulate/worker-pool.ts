import { threadPool } from '../threads/thread-pool.js';
import { CHUNK, type Evaluator, type MixedTrial, type Trial } from './evaluator.js';
import type { ShotProblem } from './shot-problem.js';
import type { Outcome } from './simulator.js';

/** The physics engine in worker threads; the answers are the same as in one thread, in the same order. */
export function pooledEvaluator(problem: ShotProblem, workers: number): Evaluator {
  const pool = threadPool<readonly (Trial | MixedTrial)[], Outcome[]>(
    new URL('./shot-worker.js', import.meta.url),
    workers,
    problem,
  );
  return {
    async evaluate(trials, onDone) {
      const chunks = Array.from({ length: Math.ceil(trials.length / CHUNK) }, (_, i) =>
        trials.slice(i * CHUNK, (i + 1) * CHUNK),
      );
      const answers = await Promise.all(
        chunks.map(async (chunk) => {
          const outcomes = await pool.run(chunk);
          onDone?.(chunk.length);
          return outcomes;
        }),
      );
      return answers.flat();
    },
    close: pool.close,
  };
}
