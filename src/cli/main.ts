#!/usr/bin/env node
import { availableParallelism } from 'node:os';
import { formatStreamFault } from '../files/system-fault.js';
import { run } from './run.js';
import { EXIT } from './terminal/exit-codes.js';

// No handler for ctrl-C and its like: the system then ends the program at once, also in the midst of a loop, and its
// threads with it. A handler would wait for the loop. Files are put in place whole, so nothing has to be tidied up.

// A reader that has seen enough (`| head`) is no failure; a full disk (`> file`) is one that a person can mend.
for (const stream of [process.stdout, process.stderr])
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(EXIT.fine);
    if (stream === process.stdout) process.stderr.write(`${formatStreamFault(error.code)}\n`);
    process.exit(EXIT.system);
  });

const code = await run(process.argv.slice(2), {
  stdin: process.stdin,
  stdout: process.stdout,
  stderr: process.stderr,
  env: process.env,
  cores: availableParallelism(),
});
// who leaves does not wait for what was being made ready
if (code === EXIT.cancelled) process.exit(code);
process.exitCode = code;
