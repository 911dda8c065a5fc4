import { PAPER_NAMES } from '../base/paper.js';
import { MIDDLE_LAYOUT_TEXT } from '../prepare/middle-layout.js';
import { RING_OVER } from '../records/schemas/ring-over.js';
import type { CommandEntry } from './flags/command-entry.js';
import {
  BALL,
  BOWLER,
  CHANGES,
  DID,
  FULL,
  HANDS,
  LANE,
  LAYOUT,
  OUNCE_KIND,
  OVERS,
  PICTURE_OUT,
  PRACTICE,
  REPORT,
  RULES,
  SEED,
  SHELF_ACTIONS,
  SHELLS,
  SHOW,
  UNLEARNED,
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
      UNLEARNED,
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
    flags: [BOWLER, BALL, LANE, LAYOUT, ...WANT, PRACTICE, UNLEARNED, SEED, RULES, FULL, REPORT],
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
      UNLEARNED,
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
    name: 'adjust',
    summary: 'what to change when a drilled ball does not do what you wanted',
    description:
      'Weighs what can be changed when a drilled ball does not do what you wanted: a move on the lane, another finish, another ball of ' +
      'yours, a little speed and, last, plugging and redrilling. It shows what each changes, in the same simulated tries, beside the scatter ' +
      `of your shots. What the ball did comes from its log, or from --did-... ${ASKS}`,
    flags: [
      ['--ball <drilled>', 'id of the drilled layout that you keep (flarewise shelf add)', []],
      ['--lane <record>', `where; ${LANE[1]} (default: that of the last logged night)`],
      ['--bowler <record>', `${BOWLER[1]} (default: whose ball it is)`],
      ...DID,
      ...CHANGES,
      UNLEARNED,
      PRACTICE,
      SEED,
      RULES,
      FULL,
      REPORT,
    ],
    examples: [
      'flarewise adjust --ball first --hook-start "3 ft later"',
      'flarewise adjust --ball first --lane house-easy --did-hook-start "36 ft" --hook-start "39 ft" --total-hook less',
    ],
    load: async () => (await import('./commands/adjust-command.js')).adjustCommand,
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
    flags: [BOWLER, BALL, LANE, LAYOUT, UNLEARNED],
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
    summary: 'a work sheet for the shop',
    description:
      'A work order for one layout: what to check, the marks by tape and protractor with room for what is measured, holes, limits ' +
      `and, on a lane, the oil rings to expect; on the screen, or with --out on paper. ${ASKS}`,
    flags: [
      BOWLER,
      BALL,
      LAYOUT,
      ['--lane <record>', 'shows the oil rings to expect on it; a file, or the id of a record'],
      UNLEARNED,
      ['--out <file>', 'write it for paper instead: a name that ends in .pdf, .svg, .png or .html'],
      ['--paper <size>', 'letter or a4 (default: what your locale uses, else letter)', PAPER_NAMES],
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
      'How far RG, differentials and asymmetry of a core move over each drilling angle (or pin-to-PAP, or pin buffer), beside a plain and ' +
      'an asymmetric ball, and whether that matters; with --lane, too, what it does to the shot. With --full: row by row, with bands, PSA and how flare starts.',
    flags: [
      BOWLER,
      BALL,
      ['--lane <record>', 'rolls the ends of the spread on it; a file, or the id of a record'],
      ['--over <number>', 'drilling-angle, pin-to-pap or buffer (default: drilling-angle)', OVERS],
      ['--layout <text>', `its other two numbers are kept (default: "${MIDDLE_LAYOUT_TEXT}")`],
      UNLEARNED,
      ['--csv', 'print comma-separated values'],
      FULL,
      PICTURE_OUT,
    ],
    examples: [
      'flarewise map --ball lobed-strong --bowler average-right --lane house-easy',
      'flarewise map --ball plain-high --bowler average-right --over pin-to-pap --csv',
    ],
    load: async () => (await import('./commands/map-command.js')).mapCommand,
  },
  {
    name: 'core',
    summary: 'check a core file, cut it and weigh it',
    description:
      'Checks a core file, draws the core cut through pin and marker and through the equator, weighs it, and says what looks wrong: a core ' +
      'upside down, a wrong unit, a part that others hide or that lies outside. A core that makes no ball is drawn too.',
    words: ['[core]', 'a core file, or a ball with a core of its own: a file or an id'],
    flags: [
      [
        '--ball <record>',
        'weighs it for that ball and compares it with the published numbers; a file, or the id of a record',
      ],
      ['--bowler <record>', 'draws the holes of their grip into it; a file, or the id of a record'],
      ['--layout <text>', `layout of those holes (default: "${MIDDLE_LAYOUT_TEXT}")`],
      PICTURE_OUT,
    ],
    examples: [
      'flarewise core own-solids',
      'flarewise core own-mesh --bowler average-right --layout "70 x 4 1/2 x 30" --out core.svg',
    ],
    load: async () => (await import('./commands/core-command.js')).coreCommand,
  },
  {
    name: 'coach',
    summary: 'every student with every ball on every lane',
    description:
      'Works out the best layout for every bowler, ball and lane, and prints one row for each student: the best ball and layout, its gain over ' +
      'the usual and whether it would be seen, what moves the reaction most, how sure that is. With --full: every ball, which balls of a ' +
      'bag do the same, and what is missing.',
    flags: [
      [
        '--bowlers <list>',
        'a folder of records, a CSV list (axis tilt, axis rotation and PAP may be ? there; a column such as "speedMph +/-" gives a standard deviation, and a column balls names the balls a bowler may use), or files and ids with commas between',
      ],
      ['--balls <list>', 'a folder of records, or files and ids with commas between'],
      ['--lanes <list>', 'a folder of records, or files and ids with commas between'],
      ...WANT,
      PRACTICE,
      UNLEARNED,
      SEED,
      RULES,
      [
        '--out <file>',
        'also write JSON lines there, bowler by bowler; a run that was stopped continues from it',
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
      'Keeps bowlers, balls, lanes and drilled layouts with their shots, each by an id that every other command takes. ' +
      'Actions: list; show ID; rename ID NEW; remove ID...; import FILE... (records, bundles, CSV lists of bowlers); ' +
      'export [ID...]; add [NAME] (a drilled layout, whose shots flarewise log keeps).',
    words: ['[words...]', `${SHELF_ACTIONS.join(', ')}, and what it is for`, SHELF_ACTIONS],
    takeKept: ['show', 'rename', 'remove', 'export'],
    flags: [
      ['--as <id>', 'id for what is imported or added (default: made from its name)'],
      ['--replace', 'import over a record of the same id'],
      ['--yes', 'remove without asking'],
      ['--csv', 'export bowlers as comma-separated values'],
      ['--bowler <record>', 'add: whose ball it is; a file, or the id of a record'],
      ['--ball <record>', 'add: which ball; a file, or the id of a record'],
      LAYOUT,
      ['--drilled-on <day>', 'add: such as 2026-03-31'],
    ],
    examples: [
      'flarewise shelf',
      'flarewise shelf import me.json new.json league.json',
      'flarewise shelf add first drill --bowler me --ball new --layout "70 x 4 1/2 x 30" --as first',
    ],
    load: async () => (await import('./commands/shelf-command.js')).shelfCommand,
  },
  {
    name: 'log',
    summary: 'shots as you saw them, with a drilled ball',
    description:
      'Keeps what you saw of a shot with a drilled ball, in one line at the lane: flarewise log ID LAYDOWN ARROWS BREAKPOINT PINS. The ' +
      'four are boards counted from the bowler’s own side, in that order; a dash stands for not seen, g at the pins for a gutter ball. ' +
      'Day, lane, games, target and pattern carry over from the line before on the same evening. In a terminal, ID alone asks shot after ' +
      'shot; without words it lists what is kept.',
    words: ['[words...]', 'ID of a drilled layout that you keep (flarewise shelf add), and four boards'],
    keptFirst: 'layout',
    flags: [
      ['--lane <record>', 'where: the id of a lane, or a name'],
      ['--night <day>', 'such as 2026-03-31 (default: this evening)'],
      ['--games <n>', 'games bowled on the oil before, by all bowlers together'],
      ['--target <board>', 'board at the arrows that you aim at; the arrows are then read against it'],
      ['--pattern <ft>', 'where the oil ends, if you know better than the lane’s record'],
      ['--at-50 <board>', 'board at 50 ft'],
      ['--breakpoint-ft <n>', 'how far down the breakpoint was, in feet, or such as "13 m"'],
      [
        '--display-speed <n>',
        'on the display over the lane, in mph, or such as "26 km/h"; kept, not learned from',
      ],
      ['--flare <n>', 'by tape at the widest place, in inches, or such as "95 mm"'],
      [
        '--ring-over <hole>',
        'an oil ring ran over this hole: thumb, middle or ring; kept, not learned from',
        RING_OVER,
      ],
      ['--read-off', 'the board at the arrows was read off, not against the target'],
      ['--note <text>', 'anything else'],
      [
        '--error <list>',
        'how far off your readings may be, one standard deviation: arrows=1,pins=0.5, or usual for the assumed ones',
      ],
      ['--other-side', 'the boards were counted from the other side: converts them'],
      ['--really', 'keep what looks odd without asking'],
      ['--edit <n>', 'change shot n, and with --lane, --games and so on its whole night'],
      ['--undo [n]', 'take the last shot back, or shot n'],
      ['--list', 'list the shots instead of asking'],
      ['--import <file>', 'keep the shots of a CSV list'],
      ['--csv', 'print the shots as comma-separated values'],
    ],
    examples: [
      'flarewise log',
      'flarewise log first 20 14 8 17 --lane house-easy --target 14',
      'flarewise log first 21 15 - g --at-50 3 --note "fast"',
      'flarewise log first --import shots.csv',
    ],
    load: async () => (await import('./commands/log-command.js')).logCommand,
  },
  {
    name: 'learned',
    summary: 'what logged shots teach',
    description:
      'What the logged shots of a bowler teach: how well the next night can be predicted, before and after; which numbers were learned ' +
      'and which not; what does not fit; how the beliefs of practice stand; what to read next. Nights on other lanes count in full for ' +
      'your release, and in part for oil and boards. Other commands use it without being asked.',
    flags: [
      BOWLER,
      ['--ball <id>', 'only with this drilled layout that you keep'],
      [
        '--lane <record>',
        'for this lane: a file, or the id of a record (default: that of the last night); with --forget, nights on it alone',
      ],
      ['--since <day>', 'only from this day on, such as 2026-03-31; nights without a day are left out'],
      PRACTICE,
      SEED,
      FULL,
      REPORT,
      [
        '--forget <file>',
        'takes these nights out of the log after writing them to this new file; flarewise shelf import brings them back',
      ],
      ['--yes', 'forget without asking'],
    ],
    examples: [
      'flarewise learned --bowler me',
      'flarewise learned --bowler me --lane house-easy --report learned.html',
      'flarewise learned --bowler me --ball first --since 2026-03-01 --forget march.json --yes',
    ],
    load: async () => (await import('./commands/learned-command.js')).learnedCommand,
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
