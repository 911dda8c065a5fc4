import type { DrilledAnswer } from '../../records/answers/answer.js';
import { ballDrawing } from '../drawings/ball-drawing.js';
import { DRILLED_ROWS } from '../tables/drilled-rows.js';
import { changeShown, withUnit } from '../text/display-units.js';
import { band, isOneCore } from '../text/figures.js';
import type { Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { bullets, joinSections, paragraph, section } from '../text/section.js';
import { gridLines, table } from '../text/table.js';
import { layoutHeadline } from '../wording/layout-headline.js';
import { sayAll } from '../wording/say.js';
import {
  arcsGrid,
  flareStartText,
  legalityLines,
  marksTable,
  psaText,
  staticsText,
} from '../wording/workshop.js';
import { cautionSection } from './caution-section.js';

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
      [
        ...paragraph(staticsText(answer.drilled.staticOz, page.units), page),
        ...paragraph(psaText(answer.psa, page.units), page),
        ...paragraph(flareStartText(answer.flareStart, page.units), page),
      ],
      page,
    ),
    section('Rules', legalityLines(answer.legality, page), page),
    section('The ball from the grip side', ballDrawing(answer.face, [], page), page),
    section('Marks to lay out', marksTable(answer.marks, page), page),
    section('Assumed', bullets(sayAll(answer.assumptions, page.units), page), page),
    cautionSection(answer.cautions, page),
  ]);
}

/** What the numbers of a redrilled ball are measured from, and what its old holes hold. */
const redrilledText = (redrilled: NonNullable<DrilledAnswer['redrilled']>, page: Page): string[] => {
  const { oldHoles, plugOz, plugTakenOz, plugged, oldMarks } = redrilled;
  const { ounce, gyration, weight } = page.units;
  const text =
    `These are numbers of a redrilled ball. Its ${oldHoles} old holes hold ${withUnit(plugOz, ounce)} of plug, of which the new ` +
    `holes take ${withUnit(plugTakenOz, ounce)}. Plugged, before the new holes, it has RG ${withUnit(plugged.rgIn, gyration)}, total ` +
    `differential ${withUnit(plugged.differentialIn, gyration)}, intermediate differential ` +
    `${withUnit(plugged.intermediateDifferentialIn, gyration)} and ${withUnit(plugged.massLb, weight)}; “before” in the table is the ball as new.`;
  return [...paragraph(text, page), ...gridLines(arcsGrid(oldMarks, page.units), page)];
};

function numbersTable({ undrilled, drilled, bands }: DrilledAnswer, page: Page): string[] {
  const { gyration, weight } = page.units;
  const cores = isOneCore(bands) ? [] : [{ head: '9 of 10\ncores' }];
  return table(
    [{ head: '' }, { head: 'before' }, { head: 'after' }, ...cores, { head: 'change' }],
    [
      ...DRILLED_ROWS.map(({ key, name }) => [
        `${name}, ${gyration.name}`,
        gyration.show(undrilled[key]),
        gyration.show(drilled[key]),
        ...cores.map(() => band(bands[key], gyration.show, page)),
        changeShown(gyration, undrilled[key], drilled[key]),
      ]),
      [
        `weight, ${weight.name}`,
        weight.show(undrilled.massLb),
        weight.show(drilled.massLb),
        ...cores.map(() => ''),
        changeShown(weight, undrilled.massLb, drilled.massLb),
      ],
    ],
    page,
  );
}
