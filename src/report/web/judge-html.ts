import type { JudgeAnswer } from '../../records/answers/answer.js';
import type { WebReportData } from '../../records/answers/web-report-data.js';
import type { Compared } from '../picture/compared.js';
import { judgeSureness, markingGrid, verdictText } from '../screens/judge-report.js';
import { causesGrid } from '../tables/causes-table.js';
import { wishesGrid } from '../tables/wishes-table.js';
import { givenWithUnit } from '../text/display-units.js';
import type { Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { sentence } from '../text/section.js';
import { layoutWords } from '../wording/layout-headline.js';
import { regressionText } from '../wording/regression-text.js';
import { sayAll } from '../wording/say.js';
import { ballFigure } from './ball-figure.js';
import { drilledSection, laneSection, linesSection, worldsSection } from './common-sections.js';
import { footText, inventedText } from './foot-text.js';
import { inputsHtml } from './inputs-html.js';
import { pageHtml } from './page-html.js';
import { type PageSection, paragraphHtml } from './section-html.js';
import { sharesFigure } from './shares-figure.js';
import { gridHtml, listHtml } from './table-html.js';

/**
 * A second opinion as one web page that fetches nothing.
 *
 * @param invented  which of bowler, ball and lane are demo records
 * @param page      of which only the units matter
 */
export function judgeHtml(
  given: JudgeAnswer,
  facts: WebReportData,
  invented: readonly string[],
  { units, paint }: Pick<Page, 'units' | 'paint'>,
): string {
  const page: Page = { width: 80, ascii: false, paint, units };
  const answer = withPlainText(given, page.ascii);
  const { layout, inputs } = answer;
  const { bowler, ball, lane } = inputs;
  const compared = judged(answer);
  return pageHtml({
    over: `Second opinion for ${bowler.name}`,
    title: layout.text,
    opening: [
      verdictText(answer),
      layoutWords(layout, page),
      `${ball.name}, ${givenWithUnit(ball.weightLb, units.weight)}, on ${lane.name}.`,
      judgeSureness(answer, units),
      ...sayAll(layout.objections, units).map((why) => `Problems: ${sentence(why)}`),
    ],
    invented: inventedText(invented),
    cautions: sayAll(answer.cautions, units),
    compared,
    sections: sections(answer, compared, facts, page),
    foot: footText(answer),
  });
}

/** The layout that was asked about, and the best one found. */
const judged = ({ layout, best }: JudgeAnswer): readonly Compared[] => [
  { sign: '1', ink: 'series1', name: `${layout.text}, the one asked about`, layout },
  { sign: '2', ink: 'series2', name: `${best.text}, the best found`, layout: best },
];

function sections(
  answer: JudgeAnswer,
  compared: readonly Compared[],
  facts: WebReportData,
  page: Page,
): PageSection[] {
  const { layout, best, inputs, targets, shares, causes, confidence } = answer;
  const { units } = page;
  return [
    {
      id: 'wishes',
      heading: 'Asked for',
      parts: [gridHtml(wishesGrid(targets, layout.reaction, page, 'this layout'))],
    },
    laneSection(answer, compared, page),
    worldsSection(compared, targets, confidence.worlds, page),
    {
      id: 'why',
      heading: 'What the best one gains',
      parts: [
        sharesFigure(
          { from: { name: '1 this layout', layout }, to: { name: '2 best found', layout: best }, shares },
          units,
        ),
        ...(causes
          ? [
              gridHtml(
                causesGrid(causes, units, 'from this one to the best'),
                'The same by cause in the drilled ball',
              ),
            ]
          : []),
      ],
    },
    {
      id: 'marking',
      heading: 'What marking errors cost',
      parts: [gridHtml(markingGrid(answer, units))],
    },
    drilledSection(layout, facts, compared, page),
    {
      id: 'marks',
      heading: `Marks of ${layout.text}`,
      parts: [ballFigure(facts.face, layout, layout.marks, units)],
    },
    linesSection(compared, page),
    { id: 'assumed', heading: 'Assumed', parts: [listHtml(sayAll(answer.assumptions, units))] },
    {
      id: 'given',
      heading: 'Given and searched',
      parts: [...inputsHtml(inputs, units), paragraphHtml(regressionText(answer.regression, page.units))],
    },
  ];
}
