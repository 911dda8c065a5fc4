import type { DrilledAnswer } from '../records/answer.js';
import { ballDrawing } from './ball-drawing.js';
import { DRILLED_ROWS } from './drilled-rows.js';
import { band, decimals, gyration, isOneCore, ounces, signed } from './figures.js';
import { layoutHeadline } from './layout-headline.js';
import type { Page } from './page.js';
import { withPlainText } from './plain-text.js';
import { bullets, joinSections, paragraph, section } from './section.js';
import { table } from './table.js';
import { arcsTable, legalityLines, marksTable, psaText, staticsText } from './workshop.js';

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
    ...(answer.redrilled ? [section('Drilled before', redrilledText(answer.redrilled, page), page)] : []),
    section(
      'Balance',
      [...paragraph(staticsText(answer.drilled.staticOz), page), ...paragraph(psaText(answer.psa), page)],
      page,
    ),
    section('Rules', legalityLines(answer.legality, page), page),
    section('The ball from the grip side', ballDrawing(answer.face, [], page), page),
    section('Marks to lay out', marksTable(answer.marks, page), page),
    section('Assumed', bullets(answer.assumptions, page), page),
    section('Before drilling', bullets(answer.cautions, page).map(page.paint.caution), page),
  ]);
}

/** What the numbers of a redrilled ball are measured from, and what its old holes hold. */
const redrilledText = (redrilled: NonNullable<DrilledAnswer['redrilled']>, page: Page): string[] => {
  const { oldHoles, plugOz, plugTakenOz, plugged, oldMarks } = redrilled;
  const text =
    `These are numbers of a redrilled ball. Its ${oldHoles} old holes hold ${ounces(plugOz)} oz of plug, of which the new ` +
    `holes take ${ounces(plugTakenOz)} oz. Plugged, before the new holes, it has RG ${gyration(plugged.rgIn)} in, total ` +
    `differential ${gyration(plugged.differentialIn)} in, intermediate differential ` +
    `${gyration(plugged.intermediateDifferentialIn)} in and ${decimals(plugged.massLb, 2)} lb; “before” in the table is the ball as new.`;
  return [...paragraph(text, page), ...arcsTable(oldMarks, page)];
};

function numbersTable({ undrilled, drilled, bands }: DrilledAnswer, page: Page): string[] {
  const cores = isOneCore(bands) ? [] : [{ head: '9 of 10\ncores' }];
  return table(
    [{ head: '' }, { head: 'before' }, { head: 'after' }, ...cores, { head: 'change' }],
    [
      ...DRILLED_ROWS.map(({ key, name }) => [
        `${name}, in`,
        gyration(undrilled[key]),
        gyration(drilled[key]),
        ...cores.map(() => band(bands[key], gyration, page)),
        signed(drilled[key] - undrilled[key], 3),
      ]),
      [
        'weight, lb',
        decimals(undrilled.massLb, 2),
        decimals(drilled.massLb, 2),
        ...cores.map(() => ''),
        signed(drilled.massLb - undrilled.massLb, 2),
      ],
    ],
    page,
  );
}
