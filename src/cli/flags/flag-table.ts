import { PIN_SIDES } from '../../records/schemas/pin-side.js';
import { WISHES, type Wish, wishWords } from '../../records/schemas/reaction-numbers.js';

import { RECOMMEND_SECTIONS } from '../../records/schemas/recommend-sections.js';
import { changeForms, changeWords, wishForms, wishUnit } from '../../records/schemas/wish-forms.js';

/** A flag as commander writes it, what it is for, and the words it takes where these are few. */
export type Flag = readonly [flag: string, what: string, words?: readonly string[]];

export const UNIT_SYSTEMS = ['trade', 'metric'] as const;
export const WANTED_PIN_SIDES = [...PIN_SIDES, 'both'] as const;
export const HANDS = ['right', 'left'] as const;
export const OUNCES = ['moment', 'halves'] as const;
export const OVERS = ['drilling-angle', 'pin-to-pap', 'buffer'] as const;
export const SHELLS = ['bash', 'zsh', 'fish'] as const;
export const SHELF_ACTIONS = ['list', 'show', 'rename', 'remove', 'import', 'export', 'add'] as const;
const STEPS = ['1', '2', '3', '4', '5'];

/*
 * Flags that several commands share, said the same way everywhere. Values stay text here: each command reads
 * all of its flags and files, so that every fault is reported at once.
 */

const RECORD = 'a file, or the id of a record you keep or of a demo';

export const BOWLER: Flag = ['--bowler <record>', RECORD];
export const BALL: Flag = ['--ball <record>', RECORD];
export const LANE: Flag = ['--lane <record>', RECORD];
export const LAYOUT: Flag = [
  '--layout <text>',
  'in quotes: drilling angle x pin-to-PAP x VAL angle, "70 x 4 1/2 x 30", or pin-to-PAP x marker-to-PAP x pin buffer, "4 1/2 x 3 3/8 x 2"',
];
/** The flag of a wish: `--hook-start`. */
export const wishFlag = (wish: Wish): string => `--${wish.replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`)}`;

export const WANT: readonly Flag[] = WISHES.map((wish) => [
  `${wishFlag(wish)} <wish>`,
  `${wishWords(wish).about}: ${wishForms(wish)}`,
  [...STEPS, ...wishWords(wish).steps],
]);
/** The flag of what a ball did of what a wish is about: `--did-hook-start`. */
export const didFlag = (wish: Wish): string => wishFlag(wish).replace('--', '--did-');

/** The wishes of a ball that is drilled: also more or less of what it does. */
export const CHANGES: readonly Flag[] = WISHES.map((wish) => [
  `${wishFlag(wish)} <wish>`,
  `${wishWords(wish).about}: ${changeForms(wish)}`,
  [changeWords(wish).more, changeWords(wish).less, ...STEPS, ...wishWords(wish).steps],
]);
export const DID: readonly Flag[] = WISHES.map((wish) => [
  `${didFlag(wish)} <number>`,
  `${wishWords(wish).about} now, in ${wishUnit(wish)} (default: as logged, else as simulated)`,
]);
export const SEED: Flag = [
  '--seed <n>',
  'seed of the random draws (default: 1); the same seed gives the same answer',
];
export const OUNCE_KIND: Flag = [
  '--ounce <kind>',
  'what an ounce of static weight is: moment or halves (default: moment)',
  OUNCES,
];
export const PRACTICE: Flag = [
  '--practice <0..100>',
  'chance in a hundred that a belief of practice holds beside physics (default: 50; 0: physics alone)',
];
export const FULL: Flag = ['--full', 'print all sections behind the first screen'];
export const SHOW: Flag = [
  '--show <sections>',
  `print some of them, with commas between: ${Object.keys(RECOMMEND_SECTIONS).join(', ')}`,
];
export const REPORT: Flag = [
  '--report <file>',
  'also write the answer as a web page with pictures; its name ends in .html',
];
export const PICTURE_OUT: Flag = [
  '--out <file>',
  'write a picture or a page instead: a name that ends in .svg, .png or .html',
];
export const RULES: Flag = ['--rules <id>', 'rule set that decides what is legal'];

export const UNLEARNED: Flag = ['--unlearned', 'leave out what the logged shots of this bowler say'];

/** Known to every command. */
export const GLOBAL_FLAGS: readonly Flag[] = [
  ['--json', 'print the answer as one JSON document'],
  ['--workers <n>', 'threads to search with (default: one for each core; 1: no extra threads)'],
  ['--units <system>', 'units of questions and answers: trade or metric (default: trade)', UNIT_SYSTEMS],
  ['--no-input', 'never ask anything'],
  ['--no-color', 'no colours (as with NO_COLOR set, or in a pipe)'],
  ['--ascii', 'draw with ASCII signs only'],
];
