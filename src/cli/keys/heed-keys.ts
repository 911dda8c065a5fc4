import { visible } from '../../base/visible.js';
import { stopProgram } from '../../interview/prompt/stop-program.js';
import { Refusal } from '../../records/refusals/refusal.js';
import { RECOMMEND_SECTIONS, type SectionId } from '../../records/schemas/recommend-sections.js';
import type { Page } from '../../report/text/page.js';
import { flow } from '../../report/text/wrap.js';
import { formatRefusal } from '../../report/wording/refusals/word-refusal.js';
import { pageFor } from '../print/page-for.js';
import { writePaged } from '../print/pager.js';
import { isMendable } from '../terminal/collect-faults.js';
import { nextKey } from '../terminal/next-key.js';
import { canAsk, type Terminal } from '../terminal/terminal.js';
import type { Standing } from './standing.js';

/** The key that opens each section. */
const SECTIONS: Readonly<Record<string, SectionId>> = {
  w: 'why',
  c: 'compare',
  p: 'path',
  l: 'line',
  b: 'practice',
  o: 'levers',
  u: 'surer',
  m: 'marks',
  x: 'searched',
  a: 'assumed',
  d: 'cautions',
};

interface Deed {
  readonly word: string;
  readonly says: string;
  readonly act: (standing: Standing) => Promise<string | null>;
}

/** What else a key does, in a word and more; a text it returns is shown. */
const DEEDS: Readonly<Record<string, Deed>> = {
  s: {
    word: 'sheet',
    says: 'write a work sheet for the shop',
    act: async (standing) => (await import('./write-sheet.js')).writeSheet(standing).then(written),
  },
  r: {
    word: 'report',
    says: 'write a web page',
    act: async (standing) => (await import('./write-page.js')).askAndWritePage(standing).then(written),
  },
  j: {
    word: 'judge',
    says: 'a second opinion on another layout',
    act: async (standing) => (await import('./judge-another.js')).judgeAnother(standing).then(() => null),
  },
  k: {
    word: 'keep',
    says: 'save bowler, ball and lane under names',
    act: async (standing) => (await import('./keep-records.js')).keepRecords(standing).then(() => null),
  },
};

const written = (path: string | null): string | null =>
  path === null ? null : `Written: ${visible(path)}\n`;

/** The key that returns to the questions: to replace a guess, or to change an answer. */
const CHANGE_KEY = 'g';

const HELP_KEY = '?';

/** Enter, q, Escape, ctrl-C and ctrl-D. */
const LEAVE_KEYS: readonly string[] = ['\r', '\n', 'q', '\u001b', '\u0003', '\u0004'];

const STOP_KEY = '\u001a'; // ctrl-Z

/** Keys that the short menu names; the long one names all. */
const SHORT: readonly string[] = ['w', 'p', 's', 'j', 'k'];

/**
 * After an answer on a terminal: each key opens a section or does what the menu says, until Enter, q, Escape or ctrl-C is pressed.
 *
 * @param canChange  whether answers of an interview can still be changed
 * @returns whether a person wants to
 */
export async function heedKeys(standing: Standing, canChange: boolean): Promise<boolean> {
  const { answer, options, terminal } = standing;
  if (!heeds(standing)) return false;
  const { recommendationSections } = await import('../../report/screens/recommendation-report.js');
  const page = pageFor(options, terminal);
  const known = [
    ...Object.keys(SECTIONS),
    ...Object.keys(DEEDS),
    HELP_KEY,
    ...(canChange ? [CHANGE_KEY] : []),
  ];
  let isLong = false;
  for (;;) {
    terminal.stderr.write(menuText(page, canChange, isLong));
    const name = await keyAmong(known, terminal);
    if (name === null || name === CHANGE_KEY) return name === CHANGE_KEY;
    isLong = name === HELP_KEY;
    if (isLong) continue;
    const id = SECTIONS[name];
    if (id !== undefined) writePaged(`\n${recommendationSections(answer, [id], page)}`, terminal);
    else await done(name, standing, page);
  }
}

/** Shows an error that the person can correct, and then the menu again. */
async function done(name: string, standing: Standing, { units }: Page): Promise<void> {
  const { stderr } = standing.terminal;
  try {
    stderr.write((await DEEDS[name]?.act(standing)) ?? '');
  } catch (error) {
    if (!isMendable(error)) throw error;
    const { message } = error instanceof Refusal ? formatRefusal(error, units) : error;
    stderr.write(`${message}\n`);
  }
}

/** The most used keys on a line or two, so that the answer stays on the screen; in long, what every key does. */
function menuText({ paint, width }: Page, canChange: boolean, isLong: boolean): string {
  const all: readonly Named[] = [
    ...Object.entries(SECTIONS).map(([key, id]): Named => [key, id, RECOMMEND_SECTIONS[id]]),
    ...Object.entries(DEEDS).map(([key, { word, says }]): Named => [key, word, says]),
  ];
  const change: readonly Named[] = canChange
    ? [[CHANGE_KEY, 'change', 'give what was guessed, or change an answer']]
    : [];
  const lines = isLong
    ? [...all, ...change].map(([key, , says]) => `${key}: ${says}`)
    : flow(
        [
          ...[...all.filter(([key]) => SHORT.includes(key)), ...change].map(
            ([key, word]) => `${key}: ${word}`,
          ),
          `${HELP_KEY}: all`,
          DONE,
        ],
        width,
      );
  return `\n${[...lines, ...(isLong ? [DONE] : [])].map(paint.quiet).join('\n')}\n`;
}

/** A key, its word and what it does. */
type Named = readonly [key: string, word: string, says: string];

const DONE = 'Enter: done';

/** Lines that the short menu takes below an answer; none where no key is waited for. */
export const menuLines = (standing: Heeding, canChange: boolean): number =>
  heeds(standing)
    ? menuText(pageFor(standing.options, standing.terminal), canChange, false).trimEnd().split('\n').length
    : 0;

/** Whether there is a person whose keys can be waited for. */
const heeds = ({ options, terminal }: Heeding): boolean =>
  !options.json && options.input && Boolean(terminal.stdout.isTTY) && canAsk(terminal);

type Heeding = Pick<Standing, 'options' | 'terminal'>;

/** The next key that is one of these; null for one that leaves. Ctrl-Z suspends the program, which then continues. */
async function keyAmong(keys: readonly string[], { stdin }: Terminal): Promise<string | null> {
  const wanted = [...keys, ...LEAVE_KEYS, STOP_KEY];
  for (;;) {
    const key = (await nextKey(stdin, (each) => wanted.includes(each.toLowerCase())))?.toLowerCase();
    if (key === undefined || LEAVE_KEYS.includes(key)) return null;
    if (key !== STOP_KEY) return key;
    stopProgram();
  }
}
