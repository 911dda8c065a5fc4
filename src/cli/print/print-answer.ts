import { visibleJson } from '../../base/visible.js';
import type { Page } from '../../report/text/page.js';
import type { GlobalOptions } from '../flags/options.js';
import type { Terminal } from '../terminal/terminal.js';
import { pageFor } from './page-for.js';

/** Writes an answer to stdout: one JSON document with `--json`, else its report. */
export function printAnswer(
  answer: unknown,
  report: (page: Page) => string,
  options: GlobalOptions,
  terminal: Terminal,
): void {
  terminal.stdout.write(options.json ? `${visibleJson(answer, 2)}\n` : report(pageFor(options, terminal)));
}
