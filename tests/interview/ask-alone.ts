import { runInterview } from '../../src/interview/ask.js';

/* The interview alone, for the tests to run in a pseudo-terminal: its records go to stdout as JSON. */

try {
  const color = !process.argv.includes('--no-color');
  const records = await runInterview({ input: process.stdin, output: process.stderr, color });
  process.stdout.write(`\n${JSON.stringify(records)}\n`);
} catch (error) {
  process.stdout.write(`\n${(error as Error).name}\n`);
}
