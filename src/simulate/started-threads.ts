import type { Fingerprint } from '../regression/fingerprint.js';
import { threadPool } from '../threads/thread-pool.js';
import type { ShotResult, ShotTask } from './shot-worker.js';

/** A started thread for shots: it loads the engine by itself, and rolls the probe shots to warm up. */
export interface StartedThread {
  run<T extends ShotResult>(task: ShotTask): Promise<T>;
  /** What the engine does with the probe shots. */
  readonly probed: Promise<Fingerprint>;
}

/**
 * Starts threads at once, passes them to `use`, and stops them in any case.
 *
 * This file imports nothing of the engine, so that threads can start before the engine is loaded.
 *
 * @param count  may be 0
 */
export async function withStartedThreads<T>(
  count: number,
  use: (threads: readonly StartedThread[]) => Promise<T>,
): Promise<T> {
  const pools = Array.from({ length: count }, () =>
    threadPool<ShotTask, ShotResult>(new URL('./shot-worker.js', import.meta.url), 1),
  );
  try {
    return await use(
      pools.map((pool) => {
        const run = async <R extends ShotResult>(task: ShotTask): Promise<R> => (await pool.run(task)) as R;
        const probed = run<Fingerprint>('fingerprint');
        probed.catch(() => undefined); // a failure is reported where the result is used
        return { run, probed };
      }),
    );
  } finally {
    await Promise.all(pools.map((pool) => pool.close()));
  }
}
