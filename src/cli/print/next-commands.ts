import { WISHES } from '../../records/schemas/reaction-numbers.js';
import type { NextStep } from '../../report/screens/next-steps.js';
import { wishFlag } from '../flags/flag-table.js';
import type { WishOptions } from '../flags/options.js';

/** Records and wishes as they were typed. */
interface Typed extends WishOptions {
  readonly bowler?: string | undefined;
  readonly ball?: string | undefined;
  readonly lane?: string | undefined;
  readonly layout?: string | undefined;
  readonly units?: string | undefined;
}

/** Commands that may follow an answer, in order, each with the records and wishes of the answer. */
export const nextCommands = (
  typed: Typed,
  codes: readonly Exclude<NextStep['code'], 'saved' | 'import'>[],
): NextStep[] => codes.map((code) => ({ code, words: WORDS[code](typed) }));

/** After the interview: the commands that follow need ids, which what was saved has. */
export const SAVED: NextStep = { code: 'saved', words: [['shelf']] };

type Words = NextStep['words'];

const sheetOf = (typed: Typed): Words => [
  ['sheet'],
  ...flags(typed, 'bowler', 'ball', 'lane', 'layout', 'units'),
  ['--out', 'sheet.pdf'],
];

const WORDS: { readonly [C in Exclude<NextStep['code'], 'saved' | 'import'>]: (typed: Typed) => Words } = {
  sheet: sheetOf,
  'sheet-of-best': sheetOf,
  sheets: sheetOf,
  judge: (typed) => [
    ['judge'],
    ...flags(typed, 'bowler', 'ball', 'lane', 'units'),
    ...wishes(typed),
    ...flags(typed, 'layout'),
  ],
  recommend: (typed) => [['recommend'], ...flags(typed, 'bowler', 'ball', 'lane', 'units'), ...wishes(typed)],
  lane: (typed) => [['recommend'], ...flags(typed, 'lane', 'units')],
  map: (typed) => [['map'], ...flags(typed, 'bowler', 'ball', 'layout', 'units')],
  drilled: (typed) => [['drilled'], ...flags(typed, 'bowler', 'ball', 'layout', 'units')],
  keep: (typed) => [['shelf', 'add'], ...flags(typed, 'bowler', 'ball', 'layout')],
};

const flags = (typed: Typed, ...names: readonly ('bowler' | 'ball' | 'lane' | 'layout' | 'units')[]): Words =>
  names.flatMap((name) => flag(`--${name}`, typed[name]));

const wishes = (typed: Typed): Words => WISHES.flatMap((wish) => flag(wishFlag(wish), typed[wish]));

const flag = (name: string, value: string | undefined): Words => (value === undefined ? [] : [[name, value]]);
