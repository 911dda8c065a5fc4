import { threadPool } from '../../../src/threads/thread-pool.js';

/* A thread that runs out of memory, in a process of its own: V8's limit holds for a whole process. */

const pool = threadPool<string, never>(new URL('./unruly-worker.mjs', import.meta.url), 1);
await pool.run('memory').catch((error: Error) => process.stdout.write(error.message));
await pool.close();
