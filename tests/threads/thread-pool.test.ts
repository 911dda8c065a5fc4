import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { afterEach, describe, expect, test } from 'vitest';
import { type ThreadPool, threadPool } from '../../src/threads/thread-pool.js';

const MODULE = new URL('../support/threads/unruly-worker.mjs', import.meta.url);

let pool: ThreadPool<string, number> | undefined;
const open = (threads: number): ThreadPool<string, number> => {
  pool = threadPool(MODULE, threads);
  return pool;
};
afterEach(() => pool?.close());

/** Codes of what became of tasks. */
const endsOf = async (tasks: readonly Promise<number>[]): Promise<readonly unknown[]> =>
  (await Promise.allSettled(tasks)).map((end) =>
    end.status === 'fulfilled' ? end.value : (end.reason.code ?? end.reason.message),
  );

describe('threadPool', () => {
  test('tasks are answered, whichever thread takes them', async () => {
    const { run } = open(2);
    expect(await endsOf(['thread', 'thread', 'thread'].map(run))).toEqual(
      Array.from({ length: 3 }, () => expect.any(Number)),
    );
  });

  test('a thread that ends fails its task, those beside it and those that wait', async () => {
    const { run } = open(2);
    const ends = await endsOf(['endless', 'exit', 'thread', 'endless'].map(run));
    expect(ends).toEqual(Array.from({ length: 4 }, () => 'worker-died'));
  });

  test('the fault names the remedy', async () => {
    await expect(open(1).run('exit')).rejects.toThrow(
      'worker thread must live until its work is done; got one that ended early. ' +
        'Close other programs to free memory, or use fewer threads: --workers 1.',
    );
  });

  test('after a death no task waits for ever', async () => {
    const { run } = open(1);
    await endsOf([run('exit')]);
    expect(await endsOf([run('thread')])).toEqual(['worker-died']);
  });

  test('what a task throws stays what it is, and the pool goes on', async () => {
    const { run } = open(1);
    expect(await endsOf(['throw', 'thread'].map(run))).toEqual(['thrown by the task', expect.any(Number)]);
  });

  test('what a thread throws outside of a task comes to light as it is', async () => {
    expect(await endsOf([open(1).run('later')])).toEqual(['thrown later']);
  });
});

test('a thread that runs out of memory says so', () => {
  const { stdout, stderr } = spawnSync(
    process.execPath,
    [
      '--max-old-space-size=64',
      '--import',
      'tsx',
      fileURLToPath(new URL('../support/threads/memory-alone.ts', import.meta.url)),
    ],
    { encoding: 'utf8' },
  );
  expect(stdout, stderr).toContain('got one that ran out of memory');
});
