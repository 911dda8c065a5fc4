import { createHash } from 'node:crypto';
import { sheetAnswer } from '../../src/answer/sheet-answer.js';
import { webReportData } from '../../src/answer/web-report-data.js';
import { demoInputs } from '../../src/cli/files/demo-inputs.js';
import { inventedAmong } from '../../src/cli/files/invented.js';
import { nextCommands } from '../../src/cli/print/next-commands.js';
import { numbersOf } from '../../src/prepare/mark-of.js';
import type { RankedLayout, RecommendAnswer } from '../../src/records/answers/answer.js';
import { DEMO } from '../../src/records/read/shelf.js';
import { loadTypeface, type Typeface } from '../../src/report/font/typeface.js';
import { PAPER, type Scene } from '../../src/report/scene/scene.js';
import { toSvg } from '../../src/report/scene/to-svg.js';
import { recommendationReport } from '../../src/report/screens/recommendation-report.js';
import { sheetPages } from '../../src/report/sheet/sheet-pages.js';
import { UNITS } from '../../src/report/text/display-units.js';
import { recommendHtml } from '../../src/report/web/recommend-html.js';
import { pageOf } from '../support/page.js';

/* What `shared/examples` shows of the demo's answer: its first screen, its web page, the work sheet for its layout. */

/** Printed on the sheet, so that the picture stays the same from day to day. */
const DATE = '2026-03-31';

const bestOf = ({ layouts }: RecommendAnswer): RankedLayout => (layouts as [RankedLayout])[0];

const nextOf = (answer: RecommendAnswer) => nextCommands({ ...DEMO, layout: bestOf(answer).text }, ['sheet']);

/** The first screen, as the command prints it 80 columns wide. */
export const exampleScreen = (answer: RecommendAnswer): string =>
  recommendationReport(answer, pageOf(80), { next: nextOf(answer) });

/** The web page that `--report` writes. */
export function exampleReport(answer: RecommendAnswer): string {
  const inputs = demoInputs();
  return recommendHtml(
    answer,
    webReportData(inputs, bestOf(answer)),
    inventedAmong(inputs),
    UNITS.trade,
    nextOf(answer),
  );
}

/** The first page of the work sheet. */
export async function exampleSheet(answer: RecommendAnswer): Promise<{ page: Scene; typeface: Typeface }> {
  const best = bestOf(answer);
  const inputs = demoInputs();
  const sheet = await sheetAnswer(
    { ...inputs, layout: numbersOf(best) },
    { date: DATE, seed: 1, ounce: 'moment', typed: best.text, invented: inventedAmong(inputs) },
  );
  const typeface = loadTypeface();
  return { page: sheetPages(sheet, 'letter', typeface, UNITS.trade)[0]!, typeface };
}

/** What the pictures were made of, by their names, as SHA-256: the page down to its first screen, the sheet's SVG. */
export async function exampleSources(answer: RecommendAnswer): Promise<Record<string, string>> {
  const { page, typeface } = await exampleSheet(answer);
  const [firstScreen] = exampleReport(answer).split('</header>', 1);
  return {
    'report.png': sha256(firstScreen!),
    'sheet.png': sha256(toSvg(page, { palette: PAPER, fontFamily: typeface.family })),
  };
}

const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex');
