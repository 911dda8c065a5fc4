import type { Page } from '../report/page.js';
import { visibleJson } from '../visible.js';
import type { GlobalOptions } from './options.js';
import { pageFor } from './page-for.js';
import type { Terminal } from './terminal.js';

/** Writes an answer to stdout: one JSON document with `--json`, else its report. */
export function printAnswer(
  answer: unknown,
  report: (page: Page) => string,
  options: GlobalOptions,
  terminal: Terminal,
): void {
  terminal.stdout.write(options.json ? `${visibleJson(answer, 2)}\n` : report(pageFor(options, terminal)));
}
