import { Command, InvalidArgumentError, Option } from 'commander';
import { shortened, visibleLines } from '../base/visible.js';
import { VERSION } from '../records/shared/version.js';
import { COMMANDS } from './command-table.js';
import type { CommandEntry } from './flags/command-entry.js';
import { type Flag, GLOBAL_FLAGS } from './flags/flag-table.js';
import type { Terminal } from './terminal/terminal.js';

const AFTER_ERROR =
  '(--help shows every flag with examples; a layout needs quotes:\n--layout "70 x 4 1/2 x 30")';

/** Of a command that takes no layout: its first example, which shows what follows which flag. */
const afterErrorOf = ({ flags, examples }: CommandEntry): string =>
  flags.some(([flag]) => flag.startsWith('--layout '))
    ? AFTER_ERROR
    : `(--help shows every flag with examples, such as:\n${examples[0]})`;

/** What was typed stands in single quotes in commander's errors; it may be a whole pasted text. */
const QUOTED = /'[^']*'/g;
const shortQuoted = (quoted: string): string => `'${shortened(quoted.slice(1, -1), 60)}'`;

/**
 * The commands of the table with their flags and helps, ready to parse a command line.
 *
 * @param args  the command line: what it does not name is listed in the help, and needs no flags of its own
 */
export function buildProgram(terminal: Terminal, args: readonly string[]): Command {
  const program = new Command('flarewise')
    .exitOverride()
    .configureOutput({
      writeOut: (text) => terminal.stdout.write(visibleLines(text)),
      writeErr: (text) => terminal.stderr.write(visibleLines(text.replace(QUOTED, shortQuoted))),
      getOutHelpWidth: () => terminal.stdout.columns ?? 80,
      getErrHelpWidth: () => terminal.stderr.columns ?? 80,
      getOutHasColors: () => false,
      getErrHasColors: () => false,
    })
    .configureHelp({ showGlobalOptions: true })
    .showSuggestionAfterError()
    .showHelpAfterError(AFTER_ERROR)
    .usage('[command] [options]')
    .description(
      'Recommends how to lay out (drill) a ten-pin bowling ball for one bowler, one lane and one wanted ' +
        'reaction, and says why and how sure it is. Without a command it asks what it needs.',
    )
    .version(VERSION, '--version', 'print the version')
    .helpOption('-h, --help', 'show this help');
  withFlags(program, GLOBAL_FLAGS);
  withExamples(program, [
    'flarewise',
    'flarewise recommend --bowler average-right --ball plain-medium --lane house-easy --hook-start 4',
  ]);
  for (const entry of COMMANDS) addCommand(program, entry, terminal, args.includes(entry.name));
  refuseOthers(program);
  return program;
}

function addCommand(program: Command, entry: CommandEntry, terminal: Terminal, isNamed: boolean): void {
  const command = program.command(entry.name).summary(entry.summary).description(entry.description);
  if (entry.words) command.argument(entry.words[0], entry.words[1]);
  // the list of commands shows whether a command takes flags: one is enough for that
  withFlags(command, isNamed ? entry.flags : entry.flags.slice(0, 1), onceOnly);
  if (!isNamed) return;
  command.showHelpAfterError(afterErrorOf(entry));
  withExamples(command, entry.examples);
  command.action(async () => {
    const runCommand = await entry.load();
    const options = command.optsWithGlobals();
    try {
      await runCommand(options as never, terminal, command.args);
    } catch (error) {
      const { withFileAtFault } = await import('./files/file-at-fault.js');
      throw withFileAtFault(error, options);
    }
  });
}

/** Any other word is refused; what to say of it is loaded only then. */
function refuseOthers(program: Command): void {
  const others = program
    .command('*', { hidden: true })
    .allowUnknownOption()
    .helpOption(false)
    .allowExcessArguments();
  others.action(async () => {
    const { formatUnknownCommand } = await import('./unknown-command.js');
    program.error(formatUnknownCommand(program.args[0]), { code: 'commander.unknownCommand' });
  });
}

function withFlags(
  command: Command,
  flags: readonly Flag[],
  heed = (option: Option): Option => option,
): void {
  for (const [flag, what] of flags) command.addOption(heed(new Option(flag, what)));
}

/** Flags of which `compare` takes several. */
const COMPARED = ['--layout', '--ball'];

/**
 * Refuses a second, different value of a flag that takes one, where commander would drop the first in silence. Flags of every command
 * are left to it, since an alias of the shell may give one.
 */
const onceOnly = (option: Option): Option =>
  option.variadic || !option.required
    ? option
    : option.argParser((value: string, before?: string) => {
        if (before === undefined || before === value) return value;
        const several = COMPARED.includes(option.long ?? '') ? '; flarewise compare takes several' : '';
        throw new InvalidArgumentError(`It takes one value, and '${before}' stands before it${several}.`);
      });

const withExamples = (command: Command, lines: readonly string[]): Command =>
  command.addHelpText('after', `\nExamples:\n${lines.map((line) => `  $ ${line}`).join('\n')}`);
