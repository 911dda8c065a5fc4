import { Piscina } from 'piscina';
import { InputError } from '../base/errors.js';

/** Worker threads that all run one module, which takes tasks as they come. */
export interface ThreadPool<Task, Result> {
  /** @throws {InputError} `worker-died` when the thread that works on it ends, or no thread can be had any more */
  run(task: Task): Promise<Result>;
  close(): Promise<void>;
}

/**
 * A pool of worker threads in which a thread that dies fails every task that is still open.
 *
 * The machine may end a thread at any time, for want of memory above all. Tasks that wait for a thread would
 * then wait for ever, so none is left open.
 *
 * @param module  its default export answers a task
 * @param data    data that every thread receives once
 */
export function threadPool<Task, Result>(
  module: URL,
  threads: number,
  data?: unknown,
): ThreadPool<Task, Result> {
  const pool = new Piscina<Task, Result>({
    filename: module.href,
    workerData: data,
    minThreads: threads,
    maxThreads: threads,
  });
  let isClosing = false;
  const died = new Promise<never>((_, reject) => {
    const fail = (error: unknown): void => {
      if (!isClosing) reject(formatDeath(error));
    };
    pool.on('error', fail);
    // a task of the thread's own says why it ended, and says so first
    pool.on('workerDestroy', () => setImmediate(fail, new Error('it ended')));
  });
  died.catch(() => undefined); // every open task says so; without one there is nothing to say
  return {
    run: (task) =>
      Promise.race([
        pool.run(task).catch((error: unknown) => {
          throw formatDeath(error);
        }),
        died,
      ]),
    async close() {
      isClosing = true;
      await pool.destroy();
    },
  };
}

/** The end of a thread as something a person can act on; what the thread's own code threw stays as it is. */
function formatDeath(error: unknown): unknown {
  const { code = '', message = '' } = error as { code?: string; message?: string };
  const isDeath = code.startsWith('ERR_WORKER_') || /^worker exited|^it ended$/.test(message);
  if (!isDeath) return error;
  return new InputError('worker-died', {
    field: 'worker thread',
    rule: 'must live until its work is done',
    got: code === 'ERR_WORKER_OUT_OF_MEMORY' ? 'one that ran out of memory' : 'one that ended early',
    hint: 'Close other programs to free memory, or use fewer threads: --workers 1.',
  });
}
