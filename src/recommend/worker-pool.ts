import { Piscina } from 'piscina';
import { CHUNK, type Evaluator, type Trial } from './evaluator.js';
import type { ShotProblem } from './shot-problem.js';
import type { Outcome } from './simulator.js';

/** The physics engine in worker threads; the answers are the same as in one thread, in the same order. */
export function pooledEvaluator(problem: ShotProblem, workers: number): Evaluator {
  const pool = new Piscina<readonly Trial[], Outcome[]>({
    filename: new URL('./shot-worker.js', import.meta.url).href,
    workerData: problem,
    minThreads: workers,
    maxThreads: workers,
  });
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
    close: () => pool.destroy(),
  };
}
