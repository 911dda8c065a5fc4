#!/usr/bin/env node
import { availableParallelism } from 'node:os';
import { EXIT } from './exit-codes.js';
import { run } from './run.js';

// Worker threads end with the process, so leaving is all an interrupt needs.
process.once('SIGINT', () => process.exit(EXIT.cancelled));

// A reader that has seen enough (`| head`) is no failure; a full disk (`> file`) is one that a person can mend.
for (const [name, stream] of Object.entries({ stdout: process.stdout, stderr: process.stderr }))
  stream.on('error', async (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(EXIT.fine);
    const [{ machineFault }, { printFailure }] = await Promise.all([
      import('../files/machine-fault.js'),
      import('./print-failure.js'),
    ]);
    const rule = 'must be a place that can be written to';
    process.exit(
      printFailure(machineFault(error, { path: name, field: 'where the output goes', rule }), process),
    );
  });

process.exitCode = await run(process.argv.slice(2), {
  stdin: process.stdin,
  stdout: process.stdout,
  stderr: process.stderr,
  env: process.env,
  cores: availableParallelism(),
});
