import type { JudgeAnswer } from '../../records/answers/answer.js';
import { wishedIds } from '../../records/schemas/want.js';
import { laneDrawing } from '../drawings/lane-drawing.js';
import { causesTable } from '../tables/causes-table.js';
import { comparisonTable } from '../tables/comparison-table.js';
import { linesTable } from '../tables/lines-table.js';
import { sharesTable } from '../tables/shares-table.js';
import { wishesTable } from '../tables/wishes-table.js';
import type { Units } from '../text/display-units.js';
import { givenWithUnit } from '../text/display-units.js';
import { percent, points, signed } from '../text/figures.js';
import type { Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { beside, bullets, joinSections, paragraph, section, sentence } from '../text/section.js';
import { type Grid, gridLines } from '../text/table.js';
import { wrap } from '../text/wrap.js';
import { layoutHeadline } from '../wording/layout-headline.js';
import { noLineText } from '../wording/no-line-text.js';
import { regressionText } from '../wording/regression-text.js';
import { say, sayAll } from '../wording/say.js';
import { scatterText, sizeText } from '../wording/statements/size-text.js';
import { afterDrilling, marksTable } from '../wording/workshop.js';

/** A second opinion as a screen of text: the verdict first, then what it rests on. */
export function judgeReport(given: JudgeAnswer, page: Page): string {
  const answer = withPlainText(given, page.ascii);
  const { layout, best, inputs } = answer;
  const { bowler, ball, lane } = inputs;
  const shots = [
    { ...layout, sign: '1' },
    { ...best, sign: '2', text: `${best.text}, the best found` },
  ];
  return joinSections([
    [
      ...wrap(`Second opinion for ${bowler.name}`, page.width).map(page.paint.heading),
      ...paragraph(`${ball.name}, ${givenWithUnit(ball.weightLb, page.units.weight)}, on ${lane.name}`, page),
    ],
    [
      ...wrap(verdictText(answer), page.width).map(page.paint.strong),
      ...paragraph(judgeSureness(answer, page.units), page),
    ],
    section('Problems', bullets(sayAll(layout.objections, page.units).map(sentence), page), page),
    layoutHeadline(layout, page),
    wishesTable(answer.targets, layout.reaction, page, 'this\nlayout'),
    beside(
      section(`How ${layout.text} rolls`, laneDrawing({ hand: bowler.hand, lane, shots }, page), page),
      section(
        `Compared with the best found, ${best.text}`,
        comparisonTable(layout, best, page, ['this one', 'best']),
        page,
      ),
      page,
    ),
    section('No line to the pocket', noLineText(answer.noLine, page), page),
    section('The line to play, and the margin for error', linesTable([layout, best], page), page),
    section(
      'What the best one gains, by number of the layout',
      sharesTable(answer.shares, page, 'from this one\nto the best'),
      page,
    ),
    section(
      'The same by cause in the drilled ball',
      causesTable(answer.causes, page, 'from this one\nto the best'),
      page,
    ),
    section('What marking errors cost', gridLines(markingGrid(answer, page.units), page), page),
    section('After drilling', afterDrilling(layout, page), page),
    section('Marks to lay out', marksTable(layout.marks, page), page),
    section('Searched', paragraph(regressionText(answer.regression, page.units), page), page),
    section('Assumed', bullets(sayAll(answer.assumptions, page.units), page), page),
    section(
      'Before drilling',
      bullets(sayAll(answer.cautions, page.units), page).map(page.paint.caution),
      page,
    ),
  ]);
}

export function verdictText({ verdict, layout, best }: JudgeAnswer): string {
  switch (verdict) {
    case 'not-allowed':
      return `Verdict: do not drill ${layout.text} as it stands; ${best.text} is the best found.`;
    case 'clearly-worse':
      return `Verdict: there is a clearly better layout, ${best.text}.`;
    case 'probably-worse':
      return `Verdict: ${best.text} is probably better.`;
    case 'no-difference-seen':
      return `Verdict: fine to drill. ${best.text} comes slightly nearer to your wish, but you would not see the difference.`;
    case 'as-good':
      return `Verdict: ${layout.text} is about as good as any for this wish.`;
  }
}

const PLACED_AMONG: Record<JudgeAnswer['place']['by'], string> = {
  physics: 'allowed layouts spread evenly',
  regression: 'layouts that may be marked, by the regression',
};

export const judgeSureness = (
  { layout, best, place, confidence, scatter, inputs }: JudgeAnswer,
  units: Units,
): string =>
  `${best.text} is ${sizeText(confidence.bestOverIt.physics.size, wishedIds(inputs.want), units)} by physics, ` +
  `${sizeText(confidence.bestOverIt.practice.size, wishedIds(inputs.want), units)} by practice; your own shots vary by ${scatterText(scatter, wishedIds(inputs.want), units)}. ` +
  `It scores ${points(layout.score)} of 100 over ${confidence.worlds} plausible worlds, the best found ${points(best.score)}, ` +
  `which comes out ahead in ${percent(confidence.bestBeatsIt)} % of them. ` +
  `It is better than ${percent(place.betterThan / place.of)} % of the ${PLACED_AMONG[place.by]}, and than the usual middle layout in ` +
  `${percent(confidence.beatsMiddle)} % of worlds.`;

export function markingGrid({ marking }: JudgeAnswer, units: Units): Grid {
  const { fineTape } = units;
  return {
    columns: [
      { head: 'off by' },
      { head: 'score\npoints' },
      { head: `flare\n${fineTape.name}` },
      { head: 'hook\nboards' },
    ],
    rows: marking.map(({ error, score, flareIn, totalHookBoards }) => [
      say(error, units),
      signed(score, 1),
      fineTape.change(flareIn),
      signed(totalHookBoards, 2),
    ]),
  };
}
