import { fromKeys } from '../../base/from-keys.js';
import type { JudgeAnswer } from '../../records/answers/answer.js';
import { CAUSES, type Cause } from '../../records/answers/statements/ids.js';
import { wishedIds } from '../../records/schemas/want.js';
import { capital } from '../../records/text/capital.js';
import { laneDrawing } from '../drawings/lane-drawing.js';
import { causesGrid } from '../tables/causes-table.js';
import { comparisonGrid } from '../tables/comparison-table.js';
import { leversGrid } from '../tables/levers-table.js';
import { linesTable } from '../tables/lines-table.js';
import { sharesGrid } from '../tables/shares-table.js';
import { wishesGrid } from '../tables/wishes-table.js';
import { givenWithUnit, type Units, withUnit } from '../text/display-units.js';
import { percent, points, signed } from '../text/figures.js';
import { type Labelled, labelledLines } from '../text/labelled.js';
import type { Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { beside, bullets, joinSections, paragraph, section, sentence } from '../text/section.js';
import { type Grid, gridLines } from '../text/table.js';
import { wrap } from '../text/wrap.js';
import { CAUSE_NAMES } from '../wording/cause-names.js';
import { guessedTexts } from '../wording/guessed-texts.js';
import { bufferDoubts, layoutHeadline } from '../wording/layout-headline.js';
import { learnedTexts } from '../wording/learned-line.js';
import { noLineText } from '../wording/no-line-text.js';
import { regressionText } from '../wording/regression-text.js';
import { say, sayAll } from '../wording/say.js';
import { scatterText, sizeText } from '../wording/statements/size-text.js';
import { afterDrilling, marksTable, oldHolesTexts } from '../wording/workshop.js';
import { cautionSection } from './caution-section.js';
import { moreLines } from './more-lines.js';

/**
 * A second opinion in a few lines: the verdict, how much it matters and why, whether it may be drilled.
 *
 * @param isFull   with everything behind the verdict
 * @param hasMore  with the flags that show more
 */
export function judgeReport(given: JudgeAnswer, page: Page, isFull = false, hasMore = !isFull): string {
  const answer = withPlainText(given, page.ascii);
  const { bowler, ball, lane } = answer.inputs;
  const title = wrap(
    `Second opinion for ${bowler.name}: ${ball.name}, ${givenWithUnit(ball.weightLb, page.units.weight)}, on ${lane.name}`,
    page.width,
  );
  const lines = [...title.map(page.paint.heading), ...labelledLines(blocks(answer, page), page)];
  return joinSections([
    lines,
    ...(isFull ? sections(answer, page) : []),
    ...(hasMore ? [moreLines(page)] : []),
  ]);
}

const blocks = (answer: JudgeAnswer, page: Page): Labelled[] => [
  { ...ALWAYS, label: 'VERDICT', texts: [verdictText(answer)], paint: page.paint.strong },
  { ...ALWAYS, label: 'STOP', texts: sayAll(answer.layout.objections, page.units).map(sentence) },
  {
    ...ALWAYS,
    label: 'FIRST',
    texts: [
      ...bufferDoubts(answer.layout, page.units),
      ...guessedTexts(answer.inputs, page.units),
      ...oldHolesTexts(answer.layout.legality, '--full'),
    ],
    paint: page.paint.caution,
  },
  { ...ALWAYS, label: 'SIZE', texts: isBest(answer) ? [] : [sizeOfGain(answer, page.units)] },
  { ...ALWAYS, label: 'CAUSE', texts: isBest(answer) ? [] : causeTexts(answer, page.units) },
  { ...ALWAYS, label: 'LEGAL', texts: [legalityText(answer, page.units)] },
  { ...ALWAYS, label: 'LOG', texts: learnedTexts(answer.learned, answer.targets, page.units) },
];

const ALWAYS = { keep: 1, yields: 0 };

export const isBest = ({ layout, best }: JudgeAnswer): boolean => layout.text === best.text;

/** What the best found does otherwise, beside the scatter of the bowler's shots. */
export function sizeOfGain({ best, confidence, scatter, inputs }: JudgeAnswer, units: Units): string {
  const ids = wishedIds(inputs.want);
  const { bestOverIt, bestBeatsIt } = confidence;
  const size = (by: 'physics' | 'practice'): string => sizeText(bestOverIt[by].size, ids, units);
  return (
    `${best.text}, the best found, is ${size('physics')} by physics, ${size('practice')} by practice; with both combined, it is ahead in ` +
    `${percent(bestBeatsIt)} of 100 simulated tries. The bowler's shots vary by ${scatterText(scatter, ids, units)}.`
  );
}

/** From which share of the scatter of shots on a difference is worth a cause, and from which share of it on one is named. */
const WORTH_A_CAUSE = 0.25;
const MOST_OF_IT = 0.5;

/** What makes most of each wished number's difference in one steady shot, where one cause does and it is not slight. */
function causeTexts({ causes, scatter, inputs }: JudgeAnswer, units: Units): string[] {
  if (!causes) return [];
  const ids = wishedIds(inputs.want).filter(
    (id) => Math.abs(causes[id].total) >= WORTH_A_CAUSE * scatter[id],
  );
  const named = CAUSES.flatMap((cause) => {
    const made = ids.filter((id) => causes[id][cause] / causes[id].total >= MOST_OF_IT);
    if (made.length === 0) return [];
    const size = (of: Cause | 'total'): string =>
      sizeText(
        fromKeys(made, (id) => causes[id][of]),
        made,
        units,
      );
    return [`${capital(CAUSE_NAMES[cause])} alone: ${size(cause)}; all causes together: ${size('total')}`];
  });
  return named.length > 0 ? [`${named.join('. ')} (by physics, one steady shot).`] : [];
}

/** Whether the layout may be drilled, and how near an oil ring comes to a hole. */
function legalityText({ layout }: JudgeAnswer, units: Units): string {
  const { tape, fineTape } = units;
  const near = layout.reaction.ringClearanceIn;
  const ring =
    near < 0
      ? `An oil ring runs over a hole by ${withUnit(-near, fineTape)}.`
      : `The nearest oil ring to a hole: ${withUnit(near, tape)}.`;
  const legal = layout.legality.legal ? 'Legal, as far as checked.' : 'NOT LEGAL: see --full.';
  return [legal, ring].join(' ');
}

/** Everything behind the verdict. */
function sections(answer: JudgeAnswer, page: Page): readonly (readonly string[])[] {
  const { layout, best, inputs } = answer;
  const { bowler, lane } = inputs;
  const { units } = page;
  const shots = [
    { ...layout, sign: '1' },
    { ...best, sign: '2', text: `${best.text}, the best found` },
  ];
  return [
    paragraph(judgePlace(answer), page),
    layoutHeadline(layout, page),
    gridLines(wishesGrid(answer.targets, layout.reaction, page, 'this\nlayout'), page),
    beside(
      section(`How ${layout.text} rolls`, laneDrawing({ hand: bowler.hand, lane, shots }, page), page),
      section(
        `Compared with the best found, ${best.text}`,
        gridLines(comparisonGrid(layout, best, page, ['this one', 'best']), page),
        page,
      ),
      page,
    ),
    section('No line to the pocket', noLineText(answer.noLine, page), page),
    section('The line to play, and the margin for error', linesTable([layout, best], page), page),
    section(
      'How the best one differs, by number of the layout (one steady shot)',
      gridLines(sharesGrid(answer.shares, units, 'from this one\nto the best'), page),
      page,
    ),
    section(
      'The same by cause (one steady shot)',
      gridLines(causesGrid(answer.causes, units, 'from this one\nto the best'), page),
      page,
    ),
    section(
      'What else would help (one steady shot)',
      gridLines(leversGrid(layout, answer.levers, 'this layout', units), page),
      page,
    ),
    section('What marking errors cost', gridLines(markingGrid(answer, units), page), page),
    section('After drilling', afterDrilling(layout, page), page),
    section('Marks to lay out', marksTable(layout.marks, page), page),
    section('How it was searched', paragraph(regressionText(answer.regression, units), page), page),
    section('Assumed', bullets(sayAll(answer.assumptions, units), page), page),
    cautionSection(answer.cautions, page),
  ];
}

/** The verdict in a sentence. */
export function verdictText({ verdict, layout, best }: JudgeAnswer): string {
  switch (verdict) {
    case 'not-allowed':
      return `Do not drill ${layout.text} as it stands; ${best.text} is the best one found.`;
    case 'clearly-worse':
      return `${best.text} is clearly better, and you would see it.`;
    case 'probably-worse':
      return `${best.text} is probably better.`;
    case 'no-difference-seen':
      return `${layout.text} is fine to drill. ${best.text} comes slightly nearer to the wish, but you would not see the difference.`;
    case 'as-good':
      return `${layout.text} is fine to drill: about as good as any for this wish.`;
  }
}

const PLACED_AMONG: Record<JudgeAnswer['place']['by'], string> = {
  physics: 'allowed layouts spread evenly',
  regression: 'layouts that may be marked, by the regression',
};

/** Where the layout stands among all. */
export const judgePlace = ({ layout, best, place, confidence }: JudgeAnswer): string =>
  `It scores ${points(layout.score)} of 100 over ${confidence.worlds} simulated tries, the best found ${points(best.score)}. ` +
  `It is better than ${percent(place.betterThan / place.of)} % of the ${PLACED_AMONG[place.by]}, and than the usual middle layout in ` +
  `${percent(confidence.beatsMiddle)} % of tries.`;

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
