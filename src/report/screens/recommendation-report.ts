import type { RankedLayout, RecommendAnswer } from '../../records/answers/answer.js';
import type { SectionId } from '../../records/schemas/recommend-sections.js';
import { wishedIds } from '../../records/schemas/want.js';
import { laneDrawing } from '../drawings/lane-drawing.js';
import { comparisonGrid } from '../tables/comparison-table.js';
import { leversGrid } from '../tables/levers-table.js';
import { linesTable } from '../tables/lines-table.js';
import { moversLines } from '../tables/movers-lines.js';
import { rankingGrid } from '../tables/ranking-table.js';
import { sharesGrid } from '../tables/shares-table.js';
import { stepsGrid } from '../tables/steps-table.js';
import { voicesLines } from '../tables/voices-table.js';
import { wishesGrid } from '../tables/wishes-table.js';
import type { Units } from '../text/display-units.js';
import type { Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { bullets, joinSections, paragraph, section } from '../text/section.js';
import { gridLines } from '../text/table.js';
import { gutterText } from '../wording/gutter-text.js';
import { noLineText } from '../wording/no-line-text.js';
import { regressionText } from '../wording/regression-text.js';
import { say, sayAll } from '../wording/say.js';
import { NOTHING_SURER, surerText } from '../wording/surer-text.js';
import { afterDrilling, marksTable } from '../wording/workshop.js';
import { cautionSection } from './caution-section.js';
import { firstScreen } from './first-screen.js';
import type { NextStep } from './next-steps.js';

/** Layouts drawn on the lane in addition to the usual one. */
const MOST_DRAWN = 4;

/** The sections behind the first screen. */
const SECTIONS: Readonly<Record<SectionId, (answer: RecommendAnswer, page: Page) => readonly string[][]>> = {
  compare: (answer, page) => {
    const best = bestOf(answer);
    return [
      gridLines(wishesGrid(answer.targets, best.reaction, page, 'best\nlayout'), page),
      section(
        'Ranked',
        [
          ...gridLines(rankingGrid(answer.layouts, answer.middle, page.units), page),
          ...paragraph(rankingNote(answer, page.units), page, page.paint.quiet),
          ...paragraph(gutterText(answer), page),
        ],
        page,
      ),
      section(
        'Key numbers with their 90 % ranges',
        gridLines(comparisonGrid(best, answer.middle, page), page),
        page,
      ),
    ];
  },
  practice: (answer, page) => [
    section('Physics, practice, and both combined', voicesLines(answer, page), page),
    section(
      'What practice believes, and what physics finds',
      bullets(sayAll(answer.beliefs, page.units), page),
      page,
    ),
  ],
  path: (answer, page) => {
    const shots = [
      ...answer.layouts.slice(0, MOST_DRAWN).map((layout) => ({ ...layout, sign: `${layout.rank}` })),
      { ...answer.middle, sign: '*', text: `${answer.middle.text}, usual` },
    ];
    const { bowler, lane } = answer.inputs;
    return [
      section(
        `How ${bestOf(answer).text} and the others roll`,
        laneDrawing({ hand: bowler.hand, lane, shots }, page),
        page,
      ),
    ];
  },
  line: (answer, page) => [
    section('No line to the pocket', noLineText(answer.noLine, page), page),
    section(
      'The line to play, and the margin for error',
      linesTable([...answer.layouts, answer.middle], page),
      page,
    ),
  ],
  why: (answer, page) => {
    const best = bestOf(answer);
    return [
      section('Why it won', bullets(sayAll(best.reasons, page.units), page), page),
      section(
        'Contribution of each layout number (one steady shot)',
        gridLines(sharesGrid(best.shares, page.units, 'against the\nusual layout'), page),
        page,
      ),
      section(
        'Sensitivity to one step (one steady shot)',
        gridLines(stepsGrid(best.steps, page.units), page),
        page,
      ),
      section('What holds the result back', bullets(sayAll(answer.limits, page.units), page), page),
    ];
  },
  levers: (answer, page) => [
    ...moversLines(answer, page),
    section(
      'What else would help (one steady shot)',
      gridLines(leversGrid(bestOf(answer), answer.levers, 'the best layout', page.units), page),
      page,
    ),
  ],
  surer: (answer, page) => [
    section('What would make the answer more certain', paragraphsOfSurer(answer, page), page),
  ],
  marks: (answer, page) => {
    const best = bestOf(answer);
    return [
      section('Marks to lay out', marksTable(best.marks, page), page),
      section('After drilling', afterDrilling(best, page), page),
    ];
  },
  searched: (answer, page) => [section('Searched', paragraph(searchText(answer, page.units), page), page)],
  assumed: (answer, page) => [
    section('Assumed', bullets(sayAll(answer.assumptions, page.units), page), page),
  ],
  cautions: (answer, page) => [cautionSection(answer.cautions, page)],
};

/** What knowing more would be worth, or that nothing would change the layout. */
const paragraphsOfSurer = ({ surer, inputs, scatter }: RecommendAnswer, page: Page): string[] =>
  surer.length > 0
    ? bullets(
        surer.map((each) => surerText(each, wishedIds(inputs.want), scatter, page.units)),
        page,
      )
    : paragraph(NOTHING_SURER, page);

const bestOf = (answer: RecommendAnswer): RankedLayout => answer.layouts[0];

/** Some sections of a recommendation. */
export function recommendationSections(
  given: RecommendAnswer,
  ids: readonly SectionId[],
  page: Page,
): string {
  const answer = withPlainText(given, page.ascii);
  return joinSections(ids.flatMap((id) => SECTIONS[id](answer, page)));
}

/** The recommendation: its first screen, and as many sections as are asked for. */
export function recommendationReport(
  answer: RecommendAnswer,
  page: Page,
  {
    sections = [],
    next = [],
    beneath = 0,
  }: {
    readonly sections?: readonly SectionId[];
    readonly next?: readonly NextStep[];
    /** Lines that must fit on the same screen, below it. */
    readonly beneath?: number;
  } = {},
): string {
  const first = `${firstScreen(answer, next, page, beneath).join('\n')}\n`;
  return sections.length === 0 ? first : `${first}\n${recommendationSections(answer, sections, page)}`;
}

export const rankingNote = (
  { middle: { objections }, targets }: Pick<RecommendAnswer, 'middle' | 'targets'>,
  units: Units,
): string =>
  '* the usual middle layout, to compare with. sure: share of simulated tries in which a layout scores above it. ' +
  `score: mean over the tries that reach the pins; 100 is ${targets.length > 0 ? 'exactly the reaction asked for' : 'one of the best entry angles'}.` +
  (objections.length > 0
    ? ` The usual layout would itself be set aside: ${sayAll(objections, units).join('; ')}.`
    : '');

export function searchText({ search, seed, version }: RecommendAnswer, units: Units): string {
  const rejected = search.rejected
    .map(({ reason, count }) => `${count} because ${say(reason, units)}`)
    .join(', ');
  return (
    `${search.candidates} layouts considered, ${search.shots} shots simulated` +
    `${rejected ? `; set aside: ${rejected}` : ''}. ${regressionText(search.regression, units)} Seed ${seed}, flarewise ${version}.`
  );
}
