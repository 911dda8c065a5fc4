import type { JudgeAnswer } from '../../records/answers/answer.js';
import type { WebReportData } from '../../records/answers/web-report-data.js';
import { wishedIds } from '../../records/schemas/want.js';
import type { Compared } from '../picture/compared.js';
import { isBest, judgePlace, markingGrid, sizeOfGain, verdictText } from '../screens/judge-report.js';
import { causesGrid } from '../tables/causes-table.js';
import { comparisonGrid } from '../tables/comparison-table.js';
import type { Moved } from '../tables/movers.js';
import { givenWithUnit, type Units } from '../text/display-units.js';
import { inUnicode } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { sentence } from '../text/section.js';
import { guessedTexts } from '../wording/guessed-texts.js';
import { bufferDoubts, layoutWords } from '../wording/layout-headline.js';
import { learnedTexts } from '../wording/learned-line.js';
import { pairedHeading, reachHeading } from '../wording/page-headings.js';
import { regressionText } from '../wording/regression-text.js';
import { sayAll } from '../wording/say.js';
import { oldHolesTexts } from '../wording/workshop.js';
import { ballFigure, gripFigure } from './parts/ball-figure.js';
import {
  drilledSection,
  foldedHtml,
  laneSection,
  leversSection,
  restsOnSection,
} from './parts/common-sections.js';
import type { FirstScreen } from './parts/first-screen-html.js';
import { footText, inventedText } from './parts/foot-text.js';
import { inputsHtml } from './parts/inputs-html.js';
import { mapFigure } from './parts/map-figure.js';
import { firstMovers } from './parts/movers-figure.js';
import { pageHtml } from './parts/page-html.js';
import { pairedFigure } from './parts/paired-figure.js';
import { reachFigure } from './parts/reach-figure.js';
import { type PageSection, paragraphHtml } from './parts/section-html.js';
import { sharesFigure } from './parts/shares-figure.js';
import { gridHtml } from './parts/table-html.js';

/**
 * A second opinion as one web page that fetches nothing.
 *
 * @param invented  which of bowler, ball and lane are demo records
 */
export function judgeHtml(
  given: JudgeAnswer,
  facts: WebReportData,
  invented: readonly string[],
  units: Units,
): string {
  const answer = withPlainText(given, false);
  const compared = judged(answer);
  return pageHtml({
    ...firstScreen(answer, facts, units),
    invented: inventedText(invented),
    sections: sections(answer, compared, facts, units),
    compared,
    foot: footText(answer),
  });
}

/** The layout that was asked about, and the best one found. */
const judged = ({ layout, best }: JudgeAnswer): readonly Compared[] => [
  { sign: '1', ink: 'series1', name: `${layout.text}, the one asked about`, layout },
  { sign: '2', ink: 'series2', name: `${best.text}, the best found`, layout: best },
];

/** What moves the reaction with the layout asked about. */
const movedBy = (answer: JudgeAnswer): Moved => ({
  scatter: answer.scatter,
  targets: answer.targets,
  reaction: answer.layout.reaction,
  levers: answer.levers,
  from: 'the usual one, and the best found against this one',
  layouts: [
    ...(isBest(answer)
      ? []
      : [
          {
            sign: '2',
            name: `${answer.best.text}, against 1`,
            size: answer.confidence.bestOverIt.physics.size,
          },
        ]),
    {
      sign: '1',
      name: `${answer.layout.text}, against the usual`,
      size: answer.confidence.overMiddle.physics.size,
    },
  ],
});

function firstScreen(
  answer: JudgeAnswer,
  { face }: WebReportData,
  units: Units,
): Omit<FirstScreen, 'invented'> {
  const { layout, inputs, targets } = answer;
  const { bowler, ball, lane, want } = inputs;
  return {
    over: `Second opinion for ${bowler.name}: ${ball.name}, ${givenWithUnit(ball.weightLb, units.weight)}, on ${lane.name}`,
    title: verdictText(answer),
    opening: [`${layout.text}: ${layoutWords(layout, inUnicode(units))}`, ...bufferDoubts(layout, units)],
    facts: [
      { label: 'Stop', texts: sayAll(layout.objections, units).map(sentence) },
      {
        label: 'First',
        texts: [...guessedTexts(inputs, units), ...oldHolesTexts(layout.legality, '“Drilled ball” below')],
      },
      { label: 'Size', texts: isBest(answer) ? [] : [sizeOfGain(answer, units)] },
      { label: 'Log', texts: learnedTexts(answer.learned, targets, units) },
    ],
    beside: gripFigure(face, layout, units),
    ...firstMovers(wishedIds(want), movedBy(answer), units),
    cautions: sayAll(answer.cautions, units),
  };
}

function sections(
  answer: JudgeAnswer,
  compared: readonly Compared[],
  facts: WebReportData,
  units: Units,
): PageSection[] {
  const { layout, best, inputs, targets, shares, causes, confidence, scatter } = answer;
  const ids = wishedIds(inputs.want);
  const from = `this ${layout.text}`;
  return [
    {
      id: 'reached',
      about: 'Wish',
      heading: reachHeading(targets, layout.text, layout.reaction, scatter, units),
      parts: [
        reachFigure(targets, compared, { reaction: layout.reaction, whose: 'this layout' }, units),
        paragraphHtml(judgePlace(answer)),
      ],
    },
    {
      id: 'beside-best',
      about: 'Beside the best',
      heading: isBest(answer)
        ? 'It is the best found'
        : pairedHeading(confidence.bestOverIt.weighed.visibility, from, 'the best found'),
      parts: isBest(answer)
        ? []
        : [
            pairedFigure(
              ids,
              {
                from,
                worlds: confidence.worlds,
                scatter,
                rows: [{ compared: compared[1], twentieths: confidence.paired }],
              },
              units,
            ),
          ],
    },
    laneSection(answer, compared, units),
    leversSection(answer, { layout, whose: 'this layout', wished: ids, moved: movedBy(answer) }, [], units),
    {
      id: 'marks',
      about: 'Marks',
      heading: `Where the marks of ${layout.text} lie, and what errors cost`,
      parts: [ballFigure(facts.face, layout, layout.marks, units), gridHtml(markingGrid(answer, units))],
    },
    drilledSection(
      layout,
      [
        foldedHtml('All numbers with their ranges', [
          gridHtml(comparisonGrid(layout, best, inUnicode(units), ['this one', 'best'])),
        ]),
        foldedHtml('Which number of the layout makes the best one differ (one steady shot)', [
          sharesFigure(ids, { shares, scatter, whose: 'from this one to the best' }, units),
          gridHtml(
            causesGrid(causes, units, 'from this one to the best'),
            'The same by cause in the drilled ball',
          ),
        ]),
        facts.map ? foldedHtml('Other layouts of this ball', [mapFigure(facts.map, compared, units)]) : '',
      ],
      units,
    ),
    restsOnSection(
      answer.assumptions,
      {
        summary: 'Given and searched',
        parts: [...inputsHtml(inputs, units), paragraphHtml(regressionText(answer.regression, units))],
      },
      units,
    ),
  ];
}
