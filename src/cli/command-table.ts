import { PAPER_NAMES } from '../base/paper.js';
import { MIDDLE_LAYOUT_TEXT } from '../prepare/middle-layout.js';
import type { CommandEntry } from './flags/command-entry.js';
import {
  BALL,
  BOWLER,
  FULL,
  HANDS,
  LANE,
  LAYOUT,
  OUNCE_KIND,
  OVERS,
  PRACTICE,
  REPORT,
  RULES,
  SEED,
  SHELF_ACTIONS,
  SHELLS,
  SHOW,
  WANT,
  WANTED_PIN_SIDES,
} from './flags/flag-table.js';

/** Said of each command that asks. */
const ASKS = 'In a terminal it asks for what its flags leave out.';

export const COMMANDS: readonly CommandEntry[] = [
  {
    name: 'recommend',
    summary: 'rank layouts for a wanted reaction',
    description: `Ranks layouts of a ball by how near they come to the reaction you want, and explains. ${ASKS}`,
    flags: [
      BOWLER,
      BALL,
      LANE,
      ...WANT,
      ['--top <n>', 'layouts to list, 1 to 10 (default: 4)'],
      PRACTICE,
      SEED,
      ['--pin-side <side>', 'where the pin may lie: above, below or both (default: above)', WANTED_PIN_SIDES],
      RULES,
      FULL,
      SHOW,
      REPORT,
    ],
    examples: [
      'flarewise recommend --bowler average-right --ball plain-medium --lane house-easy --hook-start 4 --sharpness 5',
      'flarewise recommend --bowler me.json --ball new.json --lane league.json --total-hook 3 --report answer.html',
    ],
    load: async () => (await import('./commands/recommend-command.js')).recommendCommand,
  },
  {
    name: 'judge',
    summary: 'second opinion on one layout',
    description: `Judges one layout: a verdict, its place among all, what the best one does differently, what marking errors cost. ${ASKS}`,
    flags: [BOWLER, BALL, LANE, LAYOUT, ...WANT, PRACTICE, SEED, RULES, FULL, REPORT],
    examples: [
      'flarewise judge --bowler average-right --ball plain-high --lane house-easy --sharpness 4 --layout "70 x 4 1/2 x 30"',
    ],
    load: async () => (await import('./commands/judge-command.js')).judgeCommand,
  },
  {
    name: 'compare',
    summary: 'layouts, balls or finishes beside one another',
    description:
      'Compares two to six layouts of a ball, balls with one layout, or finishes of one ball: what you would see of their differences ' +
      'beside the scatter of your shots and, with a wish, how often each comes nearer to it. The flag that is given several times says ' +
      'what varies.',
    flags: [
      BOWLER,
      LANE,
      ['--layout <text...>', `${LAYOUT[1]}; give it two to six times, or once (default: the usual one)`],
      ['--ball <record...>', `${BALL[1]}; give it once, or two to six times`],
      ['--finish <grit...>', 'finish of the cover, 220 to 6000: give it two to six times'],
      ...WANT,
      PRACTICE,
      SEED,
      RULES,
      FULL,
      REPORT,
    ],
    examples: [
      'flarewise compare --bowler average-right --ball plain-medium --lane house-easy --layout "50 x 4 1/2 x 35" --layout "70 x 4 1/2 x 30"',
      'flarewise compare --bowler average-right --lane house-easy --ball plain-medium --ball plain-high --total-hook 4',
      'flarewise compare --bowler average-right --lane house-easy --ball plain-medium --finish 500 --finish 2000 --finish 4000',
    ],
    load: async () => (await import('./commands/compare-command.js')).compareCommand,
  },
  {
    name: 'drilled',
    summary: 'drilled numbers of one layout',
    description: 'What drilling one layout makes of a ball: RG, differentials, static weights, rules, marks.',
    flags: [BOWLER, BALL, LAYOUT, OUNCE_KIND, RULES],
    examples: ['flarewise drilled --ball plain-medium --bowler average-right --layout "70 x 4 1/2 x 30"'],
    load: async () => (await import('./commands/drilled-command.js')).drilledCommand,
  },
  {
    name: 'roll',
    summary: 'one simulated shot with one layout',
    description: 'Simulates one shot with one layout: path, reaction numbers, oil rings on the ball.',
    flags: [BOWLER, BALL, LANE, LAYOUT],
    examples: [
      'flarewise roll --bowler average-right --ball plain-medium --lane house-easy --layout "45 x 4 x 45"',
    ],
    load: async () => (await import('./commands/roll-command.js')).rollCommand,
  },
  {
    name: 'lane',
    summary: 'check a lane file and draw its oil',
    description:
      'Checks a lane file, draws its oil by board and distance, and says what it means: length, middle against outside, friction, wear.',
    flags: [
      LANE,
      ['--hand <side>', 'side from which boards are counted: right or left (default: right)', HANDS],
    ],
    examples: ['flarewise lane --lane house-easy', 'flarewise lane --lane league.json --hand left --json'],
    load: async () => (await import('./commands/lane-command.js')).laneCommand,
  },
  {
    name: 'sheet',
    summary: 'a marking sheet for the shop',
    description:
      'Says how to lay one layout out with a tape, with pictures of the ball, drilled numbers, rules and, on a lane, the oil ' +
      `rings: on the screen, or with --out as one page of paper. ${ASKS}`,
    flags: [
      BOWLER,
      BALL,
      LAYOUT,
      ['--lane <record>', 'shows the oil rings to expect on it; a file, or the id of a record'],
      ['--out <file>', 'write a page instead: a name that ends in .pdf, .svg, .png or .html'],
      ['--paper <size>', 'letter or a4 (default: letter)', PAPER_NAMES],
      ['--date <day>', 'printed on it, as YYYY-MM-DD (default: today)'],
      OUNCE_KIND,
      SEED,
      ['--rules <id>', 'rule set that decides what is legal (default: all that are known)'],
    ],
    examples: [
      'flarewise sheet --bowler average-right --ball plain-medium --layout "70 x 4 1/2 x 30"',
      'flarewise sheet --bowler average-left --ball asymmetric-mild --lane house-easy --layout "50 x 4 x 45" --out sheet.pdf',
    ],
    load: async () => (await import('./commands/sheet-command.js')).sheetCommand,
  },
  {
    name: 'map',
    summary: 'drilled numbers over one number of the layout',
    description:
      'What each drilling angle (or pin-to-PAP, or pin buffer) does to a core: RG, differentials and PSA, with bands; with --lane, too, ' +
      'what that does to the shot.',
    flags: [
      BOWLER,
      BALL,
      ['--lane <record>', 'rolls the ends of the spread on it; a file, or the id of a record'],
      ['--over <number>', 'drilling-angle, pin-to-pap or buffer (default: drilling-angle)', OVERS],
      ['--layout <text>', `keeps its other two numbers (default: "${MIDDLE_LAYOUT_TEXT}")`],
      ['--csv', 'print comma-separated values'],
    ],
    examples: [
      'flarewise map --ball lobed-strong --bowler average-right --lane house-easy',
      'flarewise map --ball plain-high --bowler average-right --over pin-to-pap --csv',
    ],
    load: async () => (await import('./commands/map-command.js')).mapCommand,
  },
  {
    name: 'coach',
    summary: 'every student with every ball on every lane',
    description:
      'Works out the best layout for every bowler, ball and lane, and prints a row a student: the best ball and layout, its gain over ' +
      'the usual and whether it would be seen, what moves the reaction most, how sure that is. With --full: every ball, which balls of a ' +
      'bag do the same, and what is missing.',
    flags: [
      [
        '--bowlers <list>',
        'a folder of records, a CSV list (axis tilt, axis rotation and PAP may be ? there), or files and ids with commas between',
      ],
      ['--balls <list>', 'a folder of records, or files and ids with commas between'],
      ['--lanes <list>', 'a folder of records, or files and ids with commas between'],
      ...WANT,
      PRACTICE,
      SEED,
      RULES,
      [
        '--out <file>',
        'also write JSON lines there, bowler by bowler; a run that was stopped goes on from it',
      ],
      ['--part <k/n>', 'only the k-th of n parts; the parts’ JSON lines join by concatenation'],
      ['--csv', 'print comma-separated values'],
      ['--jsonl', 'print JSON lines'],
      FULL,
      REPORT,
    ],
    examples: [
      'flarewise coach --bowlers average-right,two-handed --balls plain-high,asymmetric-mild --lanes house-easy --total-hook 4',
    ],
    load: async () => (await import('./commands/coach-command.js')).coachCommand,
  },
  {
    name: 'shelf',
    summary: 'bowlers, balls, lanes and drilled layouts that you keep',
    description:
      'Keeps bowlers, balls, lanes and drilled layouts with their results, each by an id that every other command takes. ' +
      'Actions: list; show ID; rename ID NEW; remove ID...; import FILE... (records, bundles, CSV lists of bowlers); ' +
      'export [ID...]; add [NAME] (a drilled layout); log ID (what a drilled ball did).',
    words: ['[words...]', `${SHELF_ACTIONS.join(', ')}, and what it is for`, SHELF_ACTIONS],
    takeKept: ['show', 'rename', 'remove', 'export', 'log'],
    flags: [
      ['--as <id>', 'id for what is imported or added (default: made from its name)'],
      ['--replace', 'import over a record of the same id'],
      ['--yes', 'remove without asking'],
      ['--csv', 'export bowlers as comma-separated values'],
      ['--bowler <record>', 'add: whose ball it is; a file, or the id of a record'],
      ['--ball <record>', 'add: which ball; a file, or the id of a record'],
      LAYOUT,
      ['--drilled-on <day>', 'add: such as 2026-03-31'],
      ['--lane <name>', 'log: where it was bowled'],
      ['--on <day>', 'log: such as 2026-04-02'],
      ['--hook-start-ft <n>', 'log: where it started to hook, in feet, or such as "12 m"'],
      ['--total-hook <n>', 'log: boards it came back'],
      ['--breakpoint <n>', 'log: outermost board'],
      ['--entry-angle <n>', 'log: degrees at the pins'],
      ['--flare-in <n>', 'log: by tape at the widest place, in inches, or such as "95 mm"'],
      ['--note <text>', 'log: anything else'],
    ],
    examples: [
      'flarewise shelf',
      'flarewise shelf import me.json new.json league.json',
      'flarewise shelf add first drill --bowler me --ball new --layout "70 x 4 1/2 x 30" --as first',
    ],
    load: async () => (await import('./commands/shelf-command.js')).shelfCommand,
  },
  {
    name: 'explain',
    summary: 'what a term of the trade means',
    description: 'Explains a term of the trade in plain words; without one it lists all.',
    words: ['[term...]', 'a term, such as pin buffer'],
    flags: [],
    examples: ['flarewise explain drilling angle', 'flarewise explain'],
    load: async () => (await import('./commands/explain-command.js')).explainCommand,
  },
  {
    name: 'completions',
    summary: 'a script that lets a shell complete commands and flags',
    description: `Prints the script with which a shell completes flarewise's commands and flags: bash, zsh or fish.`,
    words: ['<shell>', 'bash, zsh or fish', SHELLS],
    flags: [],
    examples: [
      'flarewise completions bash > ~/.local/share/bash-completion/completions/flarewise',
      'flarewise completions zsh > ~/.zfunc/_flarewise',
      'flarewise completions fish > ~/.config/fish/completions/flarewise.fish',
    ],
    load: async () => (await import('./commands/completions-command.js')).completionsCommand(COMMANDS),
  },
];
