import type { CoreAnswer } from '../../records/answers/answer.js';
import { coreDrawing, coreSigns } from '../drawings/core-drawing.js';
import { coreNumbersGrid, partsGrid } from '../tables/core-tables.js';
import type { Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { bullets, joinSections, paragraph, section } from '../text/section.js';
import { gridLines } from '../text/table.js';
import { coreVerdict } from '../wording/core-verdict.js';
import { sayAll } from '../wording/say.js';
import { cautionSection } from './caution-section.js';

/** A core checked, cut in two planes and weighed, as a screen of text. */
export function coreReport(given: CoreAnswer, page: Page): string {
  const answer = withPlainText(given, page.ascii);
  const { units } = page;
  return joinSections([
    [page.paint.heading(answer.core), ...paragraph(coreVerdict(answer, units), page)],
    section('To look at', bullets(sayAll(answer.doubts, units), page).map(page.paint.caution), page),
    [...coreDrawing(answer, page), ...paragraph(coreSigns(answer, page), page, page.paint.quiet)],
    section(
      'Parts; where they overlap, the later one counts',
      gridLines(partsGrid(answer, units), page),
      page,
    ),
    section('As made', gridLines(coreNumbersGrid(answer, units), page), page),
    section('Known', bullets(sayAll(answer.known, units), page), page),
    cautionSection(answer.cautions, page),
    ...(answer.note === null ? [] : [section('Note of the file', paragraph(answer.note, page), page)]),
  ]);
}
