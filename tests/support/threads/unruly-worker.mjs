import { threadId } from 'node:worker_threads';

/** A task that says what becomes of the thread that takes it. */
export default async function work(what) {
  switch (what) {
    case 'thread':
      return threadId;
    case 'exit':
      process.exit(9);
      break;
    case 'memory': {
      const held = [];
      for (;;) held.push(new Array(1_000_000).fill(held.length));
    }
    // falls through: never reached
    case 'throw':
      throw new Error('thrown by the task');
    case 'later':
      setTimeout(() => {
        throw new Error('thrown later');
      });
      break;
  }
  return await new Promise(() => {
    setInterval(() => {}, 1000); // works without end
  });
}
