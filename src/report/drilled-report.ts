import type { DrilledAnswer } from '../records/answer.js';
import { DRILLED_ROWS } from './drilled-rows.js';
import { band, decimals, gyration, signed } from './figures.js';
import { layoutHeadline } from './layout-headline.js';
import type { Page } from './page.js';
import { withPlainText } from './plain-text.js';
import { bullets, joinSections, paragraph, section } from './section.js';
import { table } from './table.js';
import { legalityLines, marksTable, psaText, staticsText } from './workshop.js';

/** What drilling one layout makes of a ball, as a screen of text. */
export function drilledReport(given: DrilledAnswer, page: Page): string {
  const answer = withPlainText(given, page.ascii);
  return joinSections([
    [
      page.paint.heading('Drilled numbers'),
      ...paragraph(`${answer.ball}, drilled for ${answer.bowler}`, page),
    ],
    layoutHeadline(answer.layout, page),
    numbersTable(answer, page),
    section(
      'Balance',
      [...paragraph(staticsText(answer.drilled.staticOz), page), ...paragraph(psaText(answer.psa), page)],
      page,
    ),
    section('Rules', legalityLines(answer.legality, page), page),
    section('Marks to lay out', marksTable(answer.marks, page), page),
    section('Assumed', bullets(answer.assumptions, page), page),
    section('Before drilling', bullets(answer.cautions, page).map(page.paint.caution), page),
  ]);
}

const numbersTable = ({ undrilled, drilled, bands }: DrilledAnswer, page: Page): string[] =>
  table(
    [{ head: '' }, { head: 'before' }, { head: 'after' }, { head: '9 of 10\ncores' }, { head: 'change' }],
    [
      ...DRILLED_ROWS.map(({ key, name }) => [
        `${name}, in`,
        gyration(undrilled[key]),
        gyration(drilled[key]),
        band(bands[key], gyration, page),
        signed(drilled[key] - undrilled[key], 3),
      ]),
      [
        'weight, lb',
        decimals(undrilled.massLb, 2),
        decimals(drilled.massLb, 2),
        '',
        signed(drilled.massLb - undrilled.massLb, 2),
      ],
    ],
    page,
  );
