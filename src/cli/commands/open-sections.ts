import type { RecommendAnswer } from '../../records/answers/answer.js';
import { RECOMMEND_SECTIONS, type SectionId } from '../../report/screens/section-ids.js';
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

/** After an answer on a terminal: a key opens a section, until Enter, q, Escape or ctrl-C is pressed. */
export async function openSections(
  answer: RecommendAnswer,
  options: GlobalOptions,
  terminal: Terminal,
): Promise<void> {
  if (options.json || !options.input || !terminal.stdout.isTTY || !canAsk(terminal)) return;
  const { recommendationSections } = await import('../../report/screens/recommendation-report.js');
  const page = pageFor(options, terminal);
  const menu = flow(
    [...Object.entries(KEYS).map(([key, id]) => `${key}: ${RECOMMEND_SECTIONS[id]}`), 'Enter: done'],
    page.width,
  );
  for (;;) {
    terminal.stderr.write(`\n${menu.map(page.paint.quiet).join('\n')}\n`);
    const key = await nextKey(terminal.stdin);
    const id = key?.ctrl ? undefined : KEYS[key?.name ?? ''];
    if (id === undefined) return;
    writePaged(`\n${recommendationSections(answer, [id], page)}`, terminal);
  }
}
