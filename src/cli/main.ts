#!/usr/bin/env node
import { availableParallelism } from 'node:os';
import { EXIT } from './exit-codes.js';
import { run } from './run.js';

// Worker threads end with the process, so leaving is all an interrupt needs.
process.once('SIGINT', () => process.exit(EXIT.cancelled));

// A reader that has seen enough (`| head`) is no failure.
for (const stream of [process.stdout, process.stderr])
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(EXIT.fine);
    throw error;
  });

process.exitCode = await run(process.argv.slice(2), {
  stdin: process.stdin,
  stdout: process.stdout,
  stderr: process.stderr,
  env: process.env,
  cores: availableParallelism(),
});
