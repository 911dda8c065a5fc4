import { webReportData } from '../../answer/web-report-data.js';
import type { CoreFitter } from '../../prepare/fit-cores.js';
import type { WebReportData } from '../../records/answers/web-report-data.js';
import type { Page } from '../../report/text/page.js';
import type { RecommendInputs } from '../../simulate/setting.js';
import type { GlobalOptions } from '../flags/options.js';
import { pageFor } from '../print/page-for.js';
import type { Terminal } from '../terminal/terminal.js';
import { inventedAmong } from './invented.js';
import { writeOut } from './out-file.js';
import { REPORT_FLAG } from './report-flag.js';

/** An answer as a web page. */
type PageOf<T> = (answer: T, facts: WebReportData, invented: readonly string[], page: Page) => string;

/**
 * Writes an answer's web page.
 *
 * @throws {InputError} `no-access` when the place named cannot be written to
 */
export function writeReport<T>(
  path: string,
  pageOf: PageOf<T>,
  {
    answer,
    layout,
    inputs,
    fitter,
  }: {
    readonly answer: T;
    /** The layout that the page is about. */
    readonly layout: Parameters<typeof webReportData>[1];
    readonly inputs: RecommendInputs;
    readonly fitter?: CoreFitter | undefined;
  },
  options: GlobalOptions,
  terminal: Terminal,
): void {
  const facts = webReportData(inputs, layout, fitter, terminal.budget);
  const html = pageOf(answer, facts, inventedAmong(inputs), pageFor(options, terminal));
  writeOut(path, Buffer.from(html), REPORT_FLAG);
}
