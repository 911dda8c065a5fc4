import type { RankedLayout, RecommendAnswer } from '../../records/answers/answer.js';
import type { WebReportData } from '../../records/answers/web-report-data.js';
import { wishedIds } from '../../records/schemas/want.js';
import { comparedWithUsual, USUAL } from '../picture/compared.js';
import { rankingNote, searchText, surenessText } from '../screens/recommendation-report.js';
import { causesGrid } from '../tables/causes-table.js';
import { leversGrid } from '../tables/levers-table.js';
import { rankingGrid } from '../tables/ranking-table.js';
import { sharesGrid } from '../tables/shares-table.js';
import { stepsGrid } from '../tables/steps-table.js';
import { voicesGrid, voicesText } from '../tables/voices-table.js';
import { wishesGrid } from '../tables/wishes-table.js';
import { givenWithUnit } from '../text/display-units.js';
import type { Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { layoutWords } from '../wording/layout-headline.js';
import { sayAll } from '../wording/say.js';
import { surerText } from '../wording/surer-text.js';
import { arcsGrid } from '../wording/workshop.js';
import { ballFigure } from './ball-figure.js';
import { drilledSection, laneSection, linesSection, worldsSection } from './common-sections.js';
import { footText, inventedText } from './foot-text.js';
import { inputsHtml } from './inputs-html.js';
import { pageHtml } from './page-html.js';
import { type PageSection, paragraphHtml } from './section-html.js';
import { sharesFigure } from './shares-figure.js';
import { gridHtml, htmlText, listHtml } from './table-html.js';

/**
 * The recommendation as one web page that fetches nothing.
 *
 * @param invented  which of bowler, ball and lane are demo records
 * @param page      of which only the units matter
 */
export function recommendHtml(
  given: RecommendAnswer,
  facts: WebReportData,
  invented: readonly string[],
  { units, paint }: Pick<Page, 'units' | 'paint'>,
): string {
  const page: Page = { width: 80, ascii: false, paint, units };
  const answer = withPlainText(given, page.ascii);
  const best = answer.layouts[0] as RankedLayout;
  const { bowler, ball, lane } = answer.inputs;
  const compared = comparedWithUsual(answer.layouts, answer.middle);
  return pageHtml({
    over: `Layout for ${bowler.name}`,
    title: best.text,
    opening: [
      layoutWords(best, page),
      `${ball.name}, ${givenWithUnit(ball.weightLb, units.weight)}, on ${lane.name}.`,
      surenessText(answer, best, units),
    ],
    invented: inventedText(invented),
    cautions: sayAll(answer.cautions, units),
    compared,
    sections: sections(answer, best, facts, page),
    foot: footText(answer),
  });
}

function sections(
  answer: RecommendAnswer,
  best: RankedLayout,
  facts: WebReportData,
  page: Page,
): PageSection[] {
  const { layouts, middle, inputs, targets } = answer;
  const { units } = page;
  const others = layouts.slice(1);
  const compared = comparedWithUsual(layouts, middle);
  return [
    {
      id: 'ranked',
      heading: 'Ranked',
      parts: [
        gridHtml(wishesGrid(targets, best.reaction, page, 'best layout')),
        gridHtml(rankingGrid(layouts, middle, units)),
        paragraphHtml(rankingNote(middle, units)),
      ],
    },
    laneSection(answer, compared, page),
    worldsSection(compared, targets, best.confidence.worlds, page),
    {
      id: 'why',
      heading: 'Why it won',
      parts: [
        listHtml(sayAll(best.reasons, units)),
        sharesFigure(
          {
            from: { name: `${USUAL} usual layout`, layout: middle },
            to: { name: '1 this layout', layout: best },
            shares: best.shares,
          },
          units,
        ),
        ...(best.causes
          ? [
              gridHtml(
                causesGrid(best.causes, units, 'against the usual layout'),
                'By cause in the drilled ball',
              ),
            ]
          : []),
        othersHtml(
          'The same of the other layouts',
          others.map(
            ({ rank, text, shares, reasons }) =>
              `<h3>${htmlText(`${rank} ${text}`)}</h3>\n${listHtml(sayAll(reasons, units))}\n${gridHtml(sharesGrid(shares, units, 'against the usual layout'))}`,
          ),
        ),
      ],
    },
    drilledSection(best, facts, compared, page),
    {
      id: 'marks',
      heading: `Marks of ${best.text}`,
      parts: [
        ballFigure(facts.face, best, best.marks, units),
        othersHtml(
          'Marks of the other layouts',
          others.map(({ rank, text, marks }) => gridHtml(arcsGrid(marks, units), `${rank} ${text}`)),
        ),
      ],
    },
    linesSection(compared, page),
    {
      id: 'changes',
      heading: 'What would change the answer',
      parts: [
        listHtml(sayAll(answer.limits, units)),
        gridHtml(stepsGrid(best.steps, units), `One more step in a number of ${best.text}`),
        gridHtml(leversGrid(best, answer.levers, units), 'Other things than the layout'),
      ],
    },
    ...(answer.surer.length > 0
      ? [
          {
            id: 'surer',
            heading: 'What would make the answer more certain',
            parts: [listHtml(answer.surer.map((each) => surerText(each, wishedIds(inputs.want), units)))],
          },
        ]
      : []),
    {
      id: 'practice',
      heading: 'Physics and practice',
      parts: [
        ...(answer.voices
          ? [gridHtml(voicesGrid(answer.voices)), paragraphHtml(voicesText(answer, page))]
          : []),
        listHtml(sayAll(answer.beliefs, units)),
      ],
    },
    { id: 'assumed', heading: 'Assumed', parts: [listHtml(sayAll(answer.assumptions, units))] },
    {
      id: 'given',
      heading: 'Given and searched',
      parts: [...inputsHtml(inputs, units), paragraphHtml(searchText(answer, page.units))],
    },
  ];
}

/** What is told of the layouts after the first, to be opened; nothing where there are none. */
const othersHtml = (summary: string, parts: readonly string[]): string =>
  parts.length === 0
    ? ''
    : `<details>\n<summary>${htmlText(summary)}</summary>\n${parts.join('\n')}\n</details>`;
