import { CommanderError } from 'commander';
import { EXIT } from './exit-codes.js';
import type { GlobalOptions } from './options.js';
import { buildProgram } from './program.js';
import type { Terminal } from './terminal.js';

/**
 * Runs one command line and returns its exit code; never throws.
 *
 * @param args  as typed after the program's name
 */
export async function run(args: readonly string[], terminal: Terminal): Promise<number> {
  try {
    const program = buildProgram(terminal);
    const { operands, unknown } = program.parseOptions([...args]);
    if (operands.length + unknown.length > 0) await program.parseAsync([...args], { from: 'user' });
    else {
      const { guidedCommand } = await import('./guided-command.js');
      await guidedCommand(program.opts<GlobalOptions>(), terminal);
    }
    return EXIT.fine;
  } catch (error) {
    // commander has printed its message already; help and version end with 0
    if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.fine : EXIT.input;
    const { printFailure } = await import('./print-failure.js');
    return printFailure(error, terminal);
  }
}
