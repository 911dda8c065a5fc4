import type { RecommendAnswer } from '../../records/answers/answer.js';
import type { WebReportData } from '../../records/answers/web-report-data.js';
import { wishedIds } from '../../records/schemas/want.js';
import { type Compared, comparedWithUsual } from '../picture/compared.js';
import { entryTexts, vitalTexts, whyTexts } from '../screens/first-screen.js';
import { commandsOf, type NextStep } from '../screens/next-steps.js';
import { rankingNote, searchText } from '../screens/recommendation-report.js';
import { causesGrid } from '../tables/causes-table.js';
import { comparisonGrid } from '../tables/comparison-table.js';
import { type Moved, movedWith } from '../tables/movers.js';
import { rankingGrid } from '../tables/ranking-table.js';
import { stepsGrid } from '../tables/steps-table.js';
import { voicesGrid, voicesText } from '../tables/voices-table.js';
import { givenWithUnit, type Units } from '../text/display-units.js';
import { inUnicode } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { alsoTexts, apartTexts, sizeTexts, sureText } from '../wording/answer-facts.js';
import { gutterWarning } from '../wording/gutter-text.js';
import { layoutWords } from '../wording/layout-headline.js';
import { learnedTexts } from '../wording/learned-line.js';
import { pairedHeading, reachHeading } from '../wording/page-headings.js';
import { sayAll } from '../wording/say.js';
import { surerText } from '../wording/surer-text.js';
import { arcsGrid, oldHolesTexts } from '../wording/workshop.js';
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
import { noteHtml, type PageSection, paragraphHtml } from './parts/section-html.js';
import { sharesFigure } from './parts/shares-figure.js';
import { gridHtml, listHtml } from './parts/table-html.js';

/**
 * The recommendation as one web page that fetches nothing.
 *
 * @param invented  which of bowler, ball and lane are demo records
 * @param next      commands that may follow; of them the sheet is named
 */
export function recommendHtml(
  given: RecommendAnswer,
  facts: WebReportData,
  invented: readonly string[],
  units: Units,
  next: readonly NextStep[] = [],
): string {
  const answer = withPlainText(given, false);
  const compared = comparedWithUsual(answer.layouts, answer.middle);
  return pageHtml({
    ...firstScreen(answer, facts, next, units),
    invented: inventedText(invented),
    sections: sections(answer, compared, facts, units),
    compared,
    foot: footText(answer),
  });
}

/** Wider than any command: on a page it is wrapped where there is no room. */
const ONE_LINE = 1000;

/** Of all layouts the best alone: the first screen has no room for the others. */
const ofTheBest = (moved: Moved): Moved => ({
  ...moved,
  layouts: moved.layouts.filter(({ sign }) => sign === '1'),
});

function firstScreen(
  answer: RecommendAnswer,
  { face }: WebReportData,
  next: readonly NextStep[],
  units: Units,
): Omit<FirstScreen, 'invented'> {
  const { inputs, layouts } = answer;
  const { bowler, ball, lane } = inputs;
  const [best] = layouts;
  return {
    over: `For ${bowler.name}: ${ball.name}, ${givenWithUnit(ball.weightLb, units.weight)}, on ${lane.name}`,
    title: best.legality.legal ? `Drill ${best.text}` : `${best.text}, NOT LEGAL as it stands`,
    opening: [layoutWords(best, inUnicode(units)), ...apartTexts(answer, units)],
    facts: [
      {
        label: 'First',
        texts: [
          ...vitalTexts(answer, '“Lane” below', units),
          ...gutterWarning(answer),
          ...oldHolesTexts(best.legality, '“Drilled ball” below'),
        ],
      },
      { label: 'Why', texts: [...entryTexts(answer, units), ...whyTexts(answer, best, units)] },
      { label: 'Size', texts: sizeTexts(answer, best, units) },
      { label: 'Sure', texts: [sureText(answer, best, units)] },
      { label: 'Log', texts: learnedTexts(answer.learned, answer.targets, units) },
      { label: 'Also', texts: alsoTexts(answer) },
    ],
    beside: gripFigure(face, best, units),
    ...firstMovers(wishedIds(inputs.want), ofTheBest(movedWith(answer)), units),
    next:
      commandsOf(
        next.filter(({ code }) => code === 'sheet'),
        ONE_LINE,
      )[0] ?? null,
    cautions: sayAll(answer.cautions, units),
  };
}

function sections(
  answer: RecommendAnswer,
  compared: readonly Compared[],
  facts: WebReportData,
  units: Units,
): PageSection[] {
  const { layouts, middle, inputs, targets, scatter } = answer;
  const [best, ...others] = layouts;
  const ids = wishedIds(inputs.want);
  const usual = `the usual ${middle.text}`;
  return [
    {
      id: 'ranked',
      about: 'Wish',
      heading: reachHeading(targets, best.text, best.reaction, scatter, units),
      parts: [
        reachFigure(targets, compared, { reaction: best.reaction, whose: 'best layout' }, units),
        gridHtml(rankingGrid(layouts, middle, units)),
        noteHtml(rankingNote(answer, units)),
      ],
    },
    {
      id: 'beside-usual',
      about: 'Beside the usual',
      heading: pairedHeading(best.confidence.overMiddle?.weighed.visibility ?? null, usual),
      parts: [
        pairedFigure(
          ids,
          {
            from: usual,
            worlds: best.confidence.worlds,
            scatter,
            rows: layouts.flatMap(({ confidence: { paired } }, i) =>
              paired ? [{ compared: compared[i], twentieths: paired }] : [],
            ),
          },
          units,
        ),
      ],
    },
    laneSection(answer, compared, units),
    leversSection(
      answer,
      { layout: best, whose: 'the best layout', wished: ids, moved: movedWith(answer) },
      [
        foldedHtml('What holds the result back, and one more step in each number of the layout', [
          listHtml(sayAll(answer.limits, units)),
          gridHtml(stepsGrid(best.steps, units), `One more step in a number of ${best.text}`),
        ]),
        foldedHtml(
          'What would make the answer more certain',
          answer.surer.length > 0
            ? [listHtml(answer.surer.map((each) => surerText(each, ids, answer.scatter, units)))]
            : [],
        ),
        foldedHtml('Physics and practice', [
          ...(answer.voices
            ? [gridHtml(voicesGrid(answer.voices)), paragraphHtml(voicesText(answer, units))]
            : []),
          listHtml(sayAll(answer.beliefs, units)),
        ]),
      ],
      units,
    ),
    {
      id: 'marks',
      about: 'Marks',
      heading: `Where the marks of ${best.text} lie`,
      parts: [
        ballFigure(facts.face, best, best.marks, units),
        foldedHtml(
          'Marks of the other layouts',
          others.map(({ rank, text, marks }) => gridHtml(arcsGrid(marks, units), `${rank} ${text}`)),
        ),
      ],
    },
    drilledSection(
      best,
      [
        foldedHtml('All numbers with their ranges', [
          gridHtml(comparisonGrid(best, middle, inUnicode(units))),
        ]),
        foldedHtml('Which number of the layout brings what (one steady shot)', [
          listHtml(sayAll(best.reasons, units)),
          sharesFigure(ids, { shares: best.shares, scatter, whose: 'against the usual layout' }, units),
          gridHtml(
            causesGrid(best.causes, units, 'against the usual layout'),
            'By cause in the drilled ball',
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
        parts: [...inputsHtml(inputs, units), paragraphHtml(searchText(answer, units))],
      },
      units,
    ),
  ];
}
