import { visibleJson } from '../../base/visible.js';
import { type NextStep, nextSteps } from '../../report/screens/next-steps.js';
import type { Page } from '../../report/text/page.js';
import { withSentences } from '../../report/wording/with-sentences.js';
import type { GlobalOptions } from '../flags/options.js';
import type { Terminal } from '../terminal/terminal.js';
import { pageFor } from './page-for.js';
import { writePaged } from './pager.js';

/**
 * Writes an answer to stdout: one JSON document with `--json`, its sentences beside their codes; else its report, and behind it
 * the commands that may follow.
 *
 * @param report  not asked with `--json`, so that what makes it may be loaded there
 */
export async function printAnswer(
  answer: unknown,
  report: (page: Page) => string | Promise<string>,
  options: GlobalOptions,
  terminal: Terminal,
  next: readonly NextStep[] = [],
): Promise<void> {
  if (options.json) {
    terminal.stdout.write(`${visibleJson(withSentences(answer), 2)}\n`);
    return;
  }
  const page = pageFor(options, terminal);
  writePaged(`${await report(page)}${next.length === 0 ? '' : `\n${nextSteps(next, page)}`}`, terminal);
}
