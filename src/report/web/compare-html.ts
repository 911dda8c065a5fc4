import type { CompareAnswer } from '../../records/answers/compare-answer.js';
import type { Compared } from '../picture/compared.js';
import { SERIES } from '../scene/scene.js';
import { comparedFindings, compareTitle } from '../screens/compare-report.js';
import { compareGrid, compareNote } from '../tables/compare-table.js';
import { comparedDrilledGrid } from '../tables/compared-drilled-table.js';
import type { Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { sayAll } from '../wording/say.js';
import { linesSection, worldsSection } from './common-sections.js';
import { footText, inventedText } from './foot-text.js';
import { inputsHtml } from './inputs-html.js';
import { laneFigure } from './lane-figure.js';
import { pageHtml } from './page-html.js';
import { type PageSection, paragraphHtml } from './section-html.js';
import { gridHtml, listHtml } from './table-html.js';

/**
 * A comparison as one web page that fetches nothing.
 *
 * @param invented  which of bowler, ball and lane are demo records
 * @param page      of which only the units matter
 */
export function compareHtml(
  given: CompareAnswer,
  invented: readonly string[],
  { units, paint }: Pick<Page, 'units' | 'paint'>,
): string {
  const page: Page = { width: 80, ascii: false, paint, units };
  const answer = withPlainText(given, page.ascii);
  const compared = comparedRows(answer);
  return pageHtml({
    over: `Comparison for ${answer.inputs.bowler.name}`,
    title: answer.rows.map(({ name }) => name).join(' · '),
    opening: [...sayAll(answer.verdict, units), `${compareTitle(answer, units)}.`],
    invented: inventedText(invented),
    cautions: sayAll(answer.cautions, units),
    compared,
    sections: sections(answer, compared, page),
    foot: footText(answer),
  });
}

/** The rows as pictures have them: the first stands last, since differences are drawn from the last one's path. */
function comparedRows({ rows }: CompareAnswer): readonly Compared[] {
  const all = rows.map((row, i) => ({
    sign: `${i + 1}`,
    ink: i === 0 ? ('soft' as const) : SERIES[(i - 1) % SERIES.length],
    name: row.name,
    layout: { ...row, text: row.name },
  }));
  return [...all.slice(1), ...all.slice(0, 1)];
}

function sections(answer: CompareAnswer, compared: readonly Compared[], page: Page): PageSection[] {
  const { inputs, rows, targets, worlds } = answer;
  const { bowler, balls, lane, want } = inputs;
  const { units } = page;
  return [
    {
      id: 'compared',
      heading: 'Beside one another',
      parts: [gridHtml(compareGrid(answer, units)), paragraphHtml(compareNote(answer))],
    },
    {
      id: 'lane',
      heading: 'On the lane',
      parts: [laneFigure(bowler.hand, lane, compared, units)],
    },
    worldsSection(compared, targets, worlds, page),
    {
      id: 'drilled',
      heading: 'After drilling',
      parts: [gridHtml(comparedDrilledGrid(rows, page)), listHtml(comparedFindings(answer, units))],
    },
    linesSection(compared, page),
    { id: 'assumed', heading: 'Assumed', parts: [listHtml(sayAll(answer.assumptions, units))] },
    {
      id: 'given',
      heading: 'Given',
      parts: balls.flatMap((ball) => inputsHtml({ bowler, ball, lane, want }, units)),
    },
  ];
}
