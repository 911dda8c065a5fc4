import type { ThreadPool } from '../threads/thread-pool.js';
import { CHUNK, type Evaluator, type Trial } from './evaluator.js';
import type { ShotProblem } from './shot-problem.js';
import type { Outcome } from './simulator.js';

/**
 * The physics engine in worker threads; the answers are the same as in one thread, in the same order. The threads start with the
 * first trial: until then they would take the processor from whatever comes before.
 */
export function pooledEvaluator(problem: ShotProblem, workers: number): Evaluator {
  let pool: Promise<ThreadPool<readonly Trial[], Outcome[]>> | undefined;
  const start = async (): Promise<ThreadPool<readonly Trial[], Outcome[]>> => {
    const { threadPool } = await import('../threads/thread-pool.js');
    return threadPool(new URL('./shot-worker.js', import.meta.url), workers, problem);
  };
  return {
    async evaluate(trials, onDone) {
      pool ??= start();
      const { run } = await pool;
      const chunks = Array.from({ length: Math.ceil(trials.length / CHUNK) }, (_, i) =>
        trials.slice(i * CHUNK, (i + 1) * CHUNK),
      );
      const answers = await Promise.all(
        chunks.map(async (chunk) => {
          const outcomes = await run(chunk);
          onDone?.(chunk.length);
          return outcomes;
        }),
      );
      return answers.flat();
    },
    async close() {
      await (await pool)?.close();
    },
  };
}
