import { CommanderError } from 'commander';
import { formatSystemFault, isSystemError } from '../files/system-fault.js';
import type { GlobalOptions } from './flags/options.js';
import { buildProgram } from './program.js';
import { EXIT } from './terminal/exit-codes.js';
import type { Terminal } from './terminal/terminal.js';

/**
 * Runs one command line and returns its exit code; never throws.
 *
 * @param args  as typed after the program's name
 */
export async function run(args: readonly string[], terminal: Terminal): Promise<number> {
  const program = buildProgram(terminal, args);
  try {
    const { operands, unknown } = program.parseOptions([...args]);
    if (operands.length + unknown.length > 0) await program.parseAsync([...args], { from: 'user' });
    else {
      const { guidedCommand } = await import('./commands/guided-command.js');
      await guidedCommand(program.opts<GlobalOptions>(), terminal);
    }
    return EXIT.fine;
  } catch (error) {
    // commander has printed its message already; help and version end with 0
    if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.fine : EXIT.input;
    return failed(error, program.opts<GlobalOptions>(), terminal);
  }
}

async function failed(error: unknown, { units }: GlobalOptions, terminal: Terminal): Promise<number> {
  try {
    const { printFailure } = await import('./print/print-failure.js');
    return printFailure(error, terminal, units);
  } catch (second) {
    // where no more files can be opened, parts of the program cannot be loaded either
    if (!isSystemError(second)) throw second;
    terminal.stderr.write(`${formatSystemFault(second)}\n`);
    return EXIT.system;
  }
}
