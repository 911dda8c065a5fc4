import { availableParallelism } from 'node:os';
import { Command } from 'commander';
import { GLOBAL_FLAGS } from '../../src/cli/flags/flag-table.js';
import { printFailure } from '../../src/cli/print/print-failure.js';
import type { Terminal } from '../../src/cli/terminal/terminal.js';
import { FIT_FLAGS, fitCommand } from './fit-command.js';

/* Maintainers' script, `npm run fit`: fits the regression to the physics engine anew. */

const program = new Command('npm run fit --')
  .description(
    'For maintainers, after a change of the physics: rolls some hundred thousand shots of a fixed design, fits the regression ' +
      'to them and writes the model, its card and a page about it. Minutes to hours; a run that is stopped goes on where it was.',
  )
  .addHelpText(
    'after',
    '\nExample:\n  $ npm run fit -- --lanes 20 --epochs 2 --data fit-data --out fit-models',
  );
for (const [flag, what] of [...FIT_FLAGS, ...GLOBAL_FLAGS]) program.option(flag, what);
program.parse();

const { stdin, stdout, stderr, env } = process;
const terminal: Terminal = { stdin, stdout, stderr, env, cores: availableParallelism() };
try {
  await fitCommand(program.opts(), terminal);
} catch (error) {
  process.exitCode = printFailure(error, terminal);
}
