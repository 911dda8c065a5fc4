import { visibleJson } from '../../base/visible.js';
import type { Page } from '../../report/text/page.js';
import { withSentences } from '../../report/wording/with-sentences.js';
import type { GlobalOptions } from '../flags/options.js';
import type { Terminal } from '../terminal/terminal.js';
import { pageFor } from './page-for.js';

/** Writes an answer to stdout: one JSON document with `--json`, its sentences beside their codes; else its report. */
export function printAnswer(
  answer: unknown,
  report: (page: Page) => string,
  options: GlobalOptions,
  terminal: Terminal,
): void {
  terminal.stdout.write(
    options.json ? `${visibleJson(withSentences(answer), 2)}\n` : report(pageFor(options, terminal)),
  );
}
