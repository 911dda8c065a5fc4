import type { RecommendAnswer } from '../../records/answers/answer.js';
import { RECOMMEND_SECTIONS, type SectionId } from '../../records/schemas/recommend-sections.js';
import { flow } from '../../report/text/wrap.js';
import type { GlobalOptions } from '../flags/options.js';
import { pageFor } from '../print/page-for.js';
import { writePaged } from '../print/pager.js';
import { nextKey } from '../terminal/next-key.js';
import { canAsk, type Terminal } from '../terminal/terminal.js';

/** The key that opens each section. */
const KEYS: Readonly<Record<string, SectionId>> = {
  w: 'why',
  c: 'compare',
  p: 'path',
  l: 'line',
  b: 'practice',
  o: 'levers',
  u: 'surer',
  m: 'marks',
  s: 'searched',
  a: 'assumed',
  d: 'cautions',
};

/** The key with which a person who was asked goes on: to give what was guessed, or to change an answer. */
const CHANGE_KEY = 'g';

/**
 * After an answer on a terminal: a key opens a section, until Enter, q, Escape or ctrl-C is pressed.
 *
 * @param canChange  whether answers of an interview can still be changed
 * @returns whether a person wants to
 */
export async function openSections(
  answer: RecommendAnswer,
  options: GlobalOptions,
  terminal: Terminal,
  canChange: boolean,
): Promise<boolean> {
  if (options.json || !options.input || !terminal.stdout.isTTY || !canAsk(terminal)) return false;
  const { recommendationSections } = await import('../../report/screens/recommendation-report.js');
  const page = pageFor(options, terminal);
  const menu = flow(
    [
      ...Object.entries(KEYS).map(([key, id]) => `${key}: ${RECOMMEND_SECTIONS[id]}`),
      ...(canChange ? [`${CHANGE_KEY}: give what was guessed, or change an answer`] : []),
      'Enter: done',
    ],
    page.width,
  );
  for (;;) {
    terminal.stderr.write(`\n${menu.map(page.paint.quiet).join('\n')}\n`);
    const key = await nextKey(terminal.stdin);
    const name = key?.ctrl ? '' : (key?.name ?? '');
    if (canChange && name === CHANGE_KEY) return true;
    const id = KEYS[name];
    if (id === undefined) return false;
    writePaged(`\n${recommendationSections(answer, [id], page)}`, terminal);
  }
}
