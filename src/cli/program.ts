import { Command } from 'commander';
import { MIDDLE_LAYOUT } from '../recommend/middle-layout.js';
import { wordLayout } from '../records/layout-text.js';
import { VERSION } from '../records/version.js';
import type { DrilledOptions, JudgeOptions, MapOptions, RecommendOptions, RollOptions } from './options.js';
import type { Terminal } from './terminal.js';

const AFTER_ERROR =
  '(--help shows every flag with examples; a layout needs quotes: --layout "70 x 4 1/2 x 30")';
const RECORD = 'a file, or the id of a demo record';

/**
 * The commands and their flags. Values stay text here: each command reads all of its flags and files, so
 * that every fault is told at once. Commands are imported only when run, which keeps `--help` fast.
 */
export function buildProgram(terminal: Terminal): Command {
  const program = new Command('flarewise')
    .exitOverride()
    .configureOutput({
      writeOut: (text) => terminal.stdout.write(text),
      writeErr: (text) => terminal.stderr.write(text),
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
    .option('--json', 'print the answer as one JSON document')
    .option('--workers <n>', 'threads to search with (default: one for each core; 1: none besides this one)')
    .option('--no-input', 'never ask anything')
    .option('--no-color', 'no colours (as with NO_COLOR set, or in a pipe)')
    .option('--ascii', 'draw with ASCII signs only')
    .helpOption('-h, --help', 'show this help');

  examples(program, [
    'flarewise',
    'flarewise recommend --bowler average-right --ball plain-medium --lane house-easy --hook-start 4',
  ]);

  examples(
    program
      .command('recommend')
      .summary('rank layouts for a wanted reaction')
      .description('Ranks layouts of a ball by how near they come to the reaction you want, and explains.')
      .option('--bowler <record>', RECORD)
      .option('--ball <record>', RECORD)
      .option('--lane <record>', RECORD)
      .option('--hook-start <1..5>', 'when it starts to hook: 1 earliest, 5 latest')
      .option('--hook-shape <1..5>', 'how it hooks: 1 smoothest, 5 sharpest')
      .option('--hook-total <1..5>', 'how much it hooks: 1 least, 5 most')
      .option('--top <n>', 'layouts to list, 1 to 10 (default: 4)')
      .option('--seed <n>', 'seed of the random worlds (default: 1); the same seed gives the same answer')
      .option('--pin-side <side>', 'where the pin may lie: above, below or both (default: above)')
      .option('--rules <id>', 'rule set that decides what is legal')
      .action(async (_options: RecommendOptions, command: Command) => {
        const { recommendCommand } = await import('./recommend-command.js');
        await recommendCommand(command.optsWithGlobals(), terminal);
      }),
    [
      'flarewise recommend --bowler average-right --ball plain-medium --lane house-easy --hook-start 4 --hook-shape 5',
      'flarewise recommend --bowler me.json --ball new.json --lane league.json --hook-total 3 --json',
    ],
  );

  examples(
    program
      .command('judge')
      .summary('second opinion on one layout')
      .description(
        'Judges one layout: a verdict, its place among all, what the best one does differently, what marking errors cost.',
      )
      .option('--bowler <record>', RECORD)
      .option('--ball <record>', RECORD)
      .option('--lane <record>', RECORD)
      .option('--layout <text>', 'drilling angle x pin-to-PAP x VAL angle, in quotes')
      .option('--hook-start <1..5>', 'when it should start to hook: 1 earliest, 5 latest')
      .option('--hook-shape <1..5>', 'how it should hook: 1 smoothest, 5 sharpest')
      .option('--hook-total <1..5>', 'how much it should hook: 1 least, 5 most')
      .option('--seed <n>', 'seed of the random worlds (default: 1)')
      .option('--rules <id>', 'rule set that decides what is legal')
      .action(async (_options: JudgeOptions, command: Command) => {
        const { judgeCommand } = await import('./judge-command.js');
        await judgeCommand(command.optsWithGlobals(), terminal);
      }),
    [
      'flarewise judge --bowler average-right --ball plain-high --lane house-easy --hook-shape 4 --layout "70 x 4 1/2 x 30"',
    ],
  );

  examples(
    program
      .command('drilled')
      .summary('drilled numbers of one layout')
      .description(
        'What drilling one layout makes of a ball: RG, differentials, static weights, rules, marks.',
      )
      .option('--bowler <record>', RECORD)
      .option('--ball <record>', RECORD)
      .option('--layout <text>', 'drilling angle x pin-to-PAP x VAL angle, in quotes')
      .option('--ounce <kind>', 'what an ounce of static weight is: moment or halves (default: moment)')
      .option('--rules <id>', 'rule set that decides what is legal')
      .action(async (_options: DrilledOptions, command: Command) => {
        const { drilledCommand } = await import('./drilled-command.js');
        await drilledCommand(command.optsWithGlobals(), terminal);
      }),
    ['flarewise drilled --ball plain-medium --bowler average-right --layout "70 x 4 1/2 x 30"'],
  );

  examples(
    program
      .command('roll')
      .summary('one simulated shot with one layout')
      .description('Simulates one shot with one layout: path, reaction numbers, oil rings on the ball.')
      .option('--bowler <record>', RECORD)
      .option('--ball <record>', RECORD)
      .option('--lane <record>', RECORD)
      .option('--layout <text>', 'drilling angle x pin-to-PAP x VAL angle, in quotes')
      .action(async (_options: RollOptions, command: Command) => {
        const { rollCommand } = await import('./roll-command.js');
        await rollCommand(command.optsWithGlobals(), terminal);
      }),
    ['flarewise roll --bowler average-right --ball plain-medium --lane house-easy --layout "45 x 4 x 45"'],
  );

  examples(
    program
      .command('map')
      .summary('drilled numbers over one number of the layout')
      .description(
        'What each drilling angle (or pin-to-PAP, or pin buffer) does to a core: RG, differentials and PSA, with bands.',
      )
      .option('--bowler <record>', RECORD)
      .option('--ball <record>', RECORD)
      .option('--over <number>', 'drilling-angle, pin-to-pap or buffer (default: drilling-angle)')
      .option('--layout <text>', `keeps its other two numbers (default: "${wordLayout(MIDDLE_LAYOUT)}")`)
      .option('--csv', 'print comma-separated values')
      .action(async (_options: MapOptions, command: Command) => {
        const { mapCommand } = await import('./map-command.js');
        await mapCommand(command.optsWithGlobals(), terminal);
      }),
    [
      'flarewise map --ball lobed-strong --bowler average-right',
      'flarewise map --ball plain-high --bowler average-right --over pin-to-pap --csv',
    ],
  );

  return program;
}

/** Commands to copy, at the end of a help. */
const examples = (command: Command, lines: readonly string[]): Command =>
  command.addHelpText('after', `\nExamples:\n${lines.map((line) => `  $ ${line}`).join('\n')}`);
