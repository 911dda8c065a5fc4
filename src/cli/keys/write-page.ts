import { UNITS } from '../../report/text/display-units.js';
import { inventedAmong } from '../files/invented.js';
import { writeReport } from '../files/report-flag.js';
import { unitsFlag } from '../flags/units-flag.js';
import { askedFile } from './asked-file.js';
import { bestOf, type Standing } from './standing.js';

/** Asks for a file and writes the answer's web page there. @returns what was written; null for nothing */
export async function askAndWritePage(standing: Standing): Promise<string | null> {
  const file = await askedFile('Write the report, a web page, to which file?', ['html'], standing);
  if (!file) return null;
  await writePage(file.path, standing);
  return file.path;
}

/** Writes the answer's web page. */
export async function writePage(path: string, standing: Standing): Promise<void> {
  const { answer, inputs, fitter, next, options, terminal } = standing;
  const [{ webReportData }, { recommendHtml }] = await Promise.all([
    import('../../answer/web-report-data.js'),
    import('../../report/web/recommend-html.js'),
  ]);
  const facts = webReportData(inputs, bestOf(standing), fitter, terminal.budget);
  const units = UNITS[unitsFlag(options.units)];
  writeReport(path, recommendHtml(answer, facts, inventedAmong(inputs), units, next));
}
