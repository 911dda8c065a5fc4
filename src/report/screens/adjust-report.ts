import type { AdjustAnswer } from '../../records/answers/adjust-answer.js';
import { adjustGrid, adjustNote, didLines, notRecommended, redrillNote } from '../tables/adjust-table.js';
import { learnedLines } from '../tables/learned-lines.js';
import type { Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { bullets, joinSections, paragraph, section } from '../text/section.js';
import { gridLines } from '../text/table.js';
import { wrap } from '../text/wrap.js';
import { sayAll } from '../wording/say.js';
import { arcsGrid, legalityLines, marksTable } from '../wording/workshop.js';
import { moreLines } from './more-lines.js';

/** What to change in a drilled ball on one screen: what comes first, then a row for each kind of remedy; all else with `isFull`. */
export function adjustReport(given: AdjustAnswer, page: Page, isFull = false): string {
  const answer = withPlainText(given, page.ascii);
  const { verdict } = answer;
  const { units } = page;
  return joinSections([
    [
      ...wrap(adjustTitle(answer), page.width).map(page.paint.heading),
      ...paragraph(didLines(answer, units).join(' '), page),
      ...paragraph(sayAll(verdict, units).join(' '), page, page.paint.strong),
    ],
    [
      ...gridLines(
        adjustGrid(
          answer,
          answer.remedies.filter(({ rank }) => rank !== null),
          units,
          { left: hasRoom(answer, page), nearer: false },
        ),
        page,
      ),
      ...paragraph(
        [notRecommended(answer, units), redrillNote(answer), adjustNote(answer)]
          .filter((text) => text !== '')
          .join(' '),
        page,
        page.paint.quiet,
      ),
    ],
    ...(isFull
      ? sections(answer, page)
      : [[...paragraph(SHORT_CAUTION, page, page.paint.caution), ...moreLines(page)]]),
  ]);
}

/** Columns from which on a table has room for what several wishes still miss. */
const WIDE = 72;

/** What is still missing is worked out from the wish and the change; on a narrow page with several wishes it is left to `--full`. */
const hasRoom = ({ wished }: AdjustAnswer, { width }: Page): boolean => width >= WIDE || wished.length === 1;

const SHORT_CAUTION = 'Only trained people sand and drill. Local rules may forbid a new finish: ask.';

export const adjustTitle = ({ id, inputs: { bowler, lane } }: AdjustAnswer): string =>
  `What now with ${id}: ${bowler.name} on ${lane.name}`;

const sections = (answer: AdjustAnswer, page: Page): readonly (readonly string[])[] => [
  section(
    'All that was simulated',
    gridLines(adjustGrid(answer, answer.remedies, page.units, { left: true, nearer: true }), page),
    page,
  ),
  ...(answer.redrill ? redrillSections(answer.redrill, page) : []),
  section('Logged shots', learnedLines(answer, page), page),
  section('Assumed', bullets(sayAll(answer.assumptions, page.units), page), page),
  section(
    'Before sanding, polishing or drilling',
    bullets(sayAll(answer.cautions, page.units), page).map(page.paint.caution),
    page,
  ),
];

/** The plugged ball's new layout: where its holes lie beside the old ones. */
const redrillSections = (
  { layout, marks, legality, redrilled }: NonNullable<AdjustAnswer['redrill']>,
  page: Page,
): readonly (readonly string[])[] => [
  section(
    `Plugged and redrilled ${layout.text}: rules, and new holes beside old ones`,
    legalityLines(legality, page),
    page,
  ),
  section('Its marks', marksTable(marks, page), page),
  section('The old holes on it', gridLines(arcsGrid(redrilled.oldMarks, page.units), page), page),
];
