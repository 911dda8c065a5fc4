import { visibleJson } from '../../base/visible.js';
import type { Page } from '../../report/text/page.js';
import { withSentences } from '../../report/wording/with-sentences.js';
import type { GlobalOptions } from '../flags/options.js';
import type { Terminal } from '../terminal/terminal.js';
import { pageFor } from './page-for.js';
import { writePaged } from './pager.js';

/** Writes an answer to stdout: one JSON document with `--json`, its sentences beside their codes; else its report. */
export function printAnswer(
  answer: unknown,
  report: (page: Page) => string,
  options: GlobalOptions,
  terminal: Terminal,
): void {
  if (options.json) terminal.stdout.write(`${visibleJson(withSentences(answer), 2)}\n`);
  else writePaged(report(pageFor(options, terminal)), terminal);
}
