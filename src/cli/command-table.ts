import { MIDDLE_LAYOUT } from '../recommend/middle-layout.js';
import { wordLayout } from '../records/layout-text.js';
import {
  BALL,
  BOWLER,
  type Flag,
  LANE,
  LAYOUT,
  OUNCES,
  OVERS,
  PIN_SIDES,
  RULES,
  SEED,
  SHELF_ACTIONS,
  WANT,
} from './flag-table.js';
import type { Terminal } from './terminal.js';

/** One command: what its help says, and the function that runs it. */
export interface CommandEntry {
  readonly name: string;
  readonly summary: string;
  readonly description: string;
  /** Words that follow the command's name, as commander writes them, and what they are. */
  readonly words?: readonly [spelling: string, what: string];
  readonly flags: readonly Flag[];
  /** Commands to copy, at the end of its help; each runs as written. */
  readonly examples: readonly string[];
  /** Imported only when run, which keeps `--help` fast. Given the flags as text, the terminal, and the words. */
  readonly load: () => Promise<
    (options: never, terminal: Terminal, words: readonly string[]) => Promise<void>
  >;
}

export const COMMANDS: readonly CommandEntry[] = [
  {
    name: 'recommend',
    summary: 'rank layouts for a wanted reaction',
    description: 'Ranks layouts of a ball by how near they come to the reaction you want, and explains.',
    flags: [
      BOWLER,
      BALL,
      LANE,
      ...WANT,
      ['--top <n>', 'layouts to list, 1 to 10 (default: 4)'],
      SEED,
      ['--pin-side <side>', 'where the pin may lie: above, below or both (default: above)', PIN_SIDES],
      RULES,
    ],
    examples: [
      'flarewise recommend --bowler average-right --ball plain-medium --lane house-easy --hook-start 4 --hook-shape 5',
      'flarewise recommend --bowler me.json --ball new.json --lane league.json --hook-total 3 --json',
    ],
    load: async () => (await import('./recommend-command.js')).recommendCommand,
  },
  {
    name: 'judge',
    summary: 'second opinion on one layout',
    description:
      'Judges one layout: a verdict, its place among all, what the best one does differently, what marking errors cost.',
    flags: [BOWLER, BALL, LANE, LAYOUT, ...WANT, SEED, RULES],
    examples: [
      'flarewise judge --bowler average-right --ball plain-high --lane house-easy --hook-shape 4 --layout "70 x 4 1/2 x 30"',
    ],
    load: async () => (await import('./judge-command.js')).judgeCommand,
  },
  {
    name: 'drilled',
    summary: 'drilled numbers of one layout',
    description: 'What drilling one layout makes of a ball: RG, differentials, static weights, rules, marks.',
    flags: [
      BOWLER,
      BALL,
      LAYOUT,
      ['--ounce <kind>', 'what an ounce of static weight is: moment or halves (default: moment)', OUNCES],
      RULES,
    ],
    examples: ['flarewise drilled --ball plain-medium --bowler average-right --layout "70 x 4 1/2 x 30"'],
    load: async () => (await import('./drilled-command.js')).drilledCommand,
  },
  {
    name: 'roll',
    summary: 'one simulated shot with one layout',
    description: 'Simulates one shot with one layout: path, reaction numbers, oil rings on the ball.',
    flags: [BOWLER, BALL, LANE, LAYOUT],
    examples: [
      'flarewise roll --bowler average-right --ball plain-medium --lane house-easy --layout "45 x 4 x 45"',
    ],
    load: async () => (await import('./roll-command.js')).rollCommand,
  },
  {
    name: 'map',
    summary: 'drilled numbers over one number of the layout',
    description:
      'What each drilling angle (or pin-to-PAP, or pin buffer) does to a core: RG, differentials and PSA, with bands.',
    flags: [
      BOWLER,
      BALL,
      ['--over <number>', 'drilling-angle, pin-to-pap or buffer (default: drilling-angle)', OVERS],
      ['--layout <text>', `keeps its other two numbers (default: "${wordLayout(MIDDLE_LAYOUT)}")`],
      ['--csv', 'print comma-separated values'],
    ],
    examples: [
      'flarewise map --ball lobed-strong --bowler average-right',
      'flarewise map --ball plain-high --bowler average-right --over pin-to-pap --csv',
    ],
    load: async () => (await import('./map-command.js')).mapCommand,
  },
  {
    name: 'shelf',
    summary: 'bowlers, balls, lanes and drilled layouts that you keep',
    description:
      'Keeps bowlers, balls, lanes and drilled layouts with their results, each by an id that every other command takes. ' +
      'Actions: list; show ID; rename ID NEW; remove ID...; import FILE... (records, bundles, CSV lists of bowlers); ' +
      'export [ID...]; add [NAME] (a drilled layout); log ID (what a drilled ball did).',
    words: ['[words...]', `${SHELF_ACTIONS.join(', ')}, and what it is for`],
    flags: [
      ['--as <id>', 'id for what is imported or added (default: made from its name)'],
      ['--replace', 'import over a record of the same id'],
      ['--yes', 'remove without asking'],
      ['--csv', 'export bowlers as comma-separated values'],
      ['--bowler <name>', 'add: whose ball it is'],
      ['--ball <name>', 'add: which ball'],
      LAYOUT,
      ['--drilled-on <day>', 'add: such as 2026-03-31'],
      ['--lane <name>', 'log: where it was bowled'],
      ['--on <day>', 'log: such as 2026-04-02'],
      ['--hook-start-ft <n>', 'log: where it started to hook'],
      ['--total-hook <n>', 'log: boards it came back'],
      ['--breakpoint <n>', 'log: outermost board'],
      ['--entry-angle <n>', 'log: degrees at the pins'],
      ['--flare-in <n>', 'log: by tape at the widest place'],
      ['--note <text>', 'log: anything else'],
    ],
    examples: [
      'flarewise shelf',
      'flarewise shelf import me.json new.json league.json',
      'flarewise shelf add first drill --bowler me --ball new --layout "70 x 4 1/2 x 30" --as first',
    ],
    load: async () => (await import('./shelf-command.js')).shelfCommand,
  },
  {
    name: 'explain',
    summary: 'what a term of the trade means',
    description: 'Explains a term of the trade in plain words; without one it lists all.',
    words: ['[term...]', 'a term, such as pin buffer'],
    flags: [],
    examples: ['flarewise explain drilling angle', 'flarewise explain'],
    load: async () => (await import('./explain-command.js')).explainCommand,
  },
  {
    name: 'completions',
    summary: 'a script that lets a shell complete commands and flags',
    description: `Prints the script with which a shell completes flarewise's commands and flags: bash, zsh or fish.`,
    words: ['<shell>', 'bash, zsh or fish'],
    flags: [],
    examples: [
      'flarewise completions bash > ~/.local/share/bash-completion/completions/flarewise',
      'flarewise completions zsh > ~/.zfunc/_flarewise',
      'flarewise completions fish > ~/.config/fish/completions/flarewise.fish',
    ],
    load: async () => (await import('./completions-command.js')).completionsCommand,
  },
];
