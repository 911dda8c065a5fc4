import type { RankedLayout, RecommendAnswer, SimulatedLayout } from '../records/answer.js';
import { SLIGHTLY } from '../records/sureness.js';
import { comparisonTable } from './comparison-table.js';
import { decimals, percent } from './figures.js';
import { laneDrawing } from './lane-drawing.js';
import { layoutHeadline } from './layout-headline.js';
import { leversTable } from './levers-table.js';
import { linesTable } from './lines-table.js';
import { noLineText } from './no-line-text.js';
import type { Page } from './page.js';
import { withPlainText } from './plain-text.js';
import { rankingTable } from './ranking-table.js';
import { beside, bullets, joinSections, paragraph, section } from './section.js';
import { sharesTable } from './shares-table.js';
import { stepsTable } from './steps-table.js';
import { verdict } from './verdict.js';
import { wishesTable } from './wishes-table.js';
import { afterDrilling, marksTable } from './workshop.js';
import { wrap } from './wrap.js';

/**
 * The recommendation as a screen of text: what to drill first, then how the ball will roll, why, how sure,
 * what to mark, and last what to beware of.
 */
export function recommendationReport(given: RecommendAnswer, page: Page): string {
  const answer = withPlainText(given, page.ascii);
  const best = answer.layouts[0] as RankedLayout;
  const { bowler, ball, lane } = answer.inputs;
  const opening = [
    ...wrap(`Layout for ${bowler.name}`, page.width).map(page.paint.heading),
    ...paragraph(`${ball.name}, ${ball.weightLb} lb, on ${lane.name}`, page),
  ];

  const shot = { hand: bowler.hand, lane, line: best.line, path: best.path, reaction: best.reaction };
  return joinSections([
    opening,
    [...layoutHeadline(best, page), ...paragraph(surenessText(answer, best), page)],
    wishesTable(answer.targets, best.reaction, page),
    section(
      'Ranked',
      [...rankingTable(answer.layouts, answer.middle, page), ...rankingNote(answer.middle, page)],
      page,
    ),
    beside(
      section(`How ${best.text} rolls`, laneDrawing(shot, page), page),
      section('Numbers and how wide they are', comparisonTable(best, answer.middle, page), page),
      page,
    ),
    section('No line to the pocket', noLineText(answer.noLine, page), page),
    section(
      'Each on its own line, and the room to miss it',
      linesTable([...answer.layouts, answer.middle], page),
      page,
    ),
    section('Why it won', bullets(best.reasons, page), page),
    section('Which number does what, in one undisturbed shot', sharesTable(best.shares, page), page),
    section('What another step would change', stepsTable(best.steps, page), page),
    section('What holds the result back', bullets(answer.limits, page), page),
    section('When layout is not enough: what else would do', leversTable(best, answer.levers, page), page),
    section('Marks to lay out', marksTable(best.marks, page), page),
    section('After drilling', afterDrilling(best, page), page),
    section('Searched', paragraph(searchText(answer), page), page),
    section('Assumed', bullets(answer.assumptions, page), page),
    section('Before drilling', bullets(answer.cautions, page).map(page.paint.caution), page),
  ]);
}

/** How often the best layout beats the next and the usual one, in words and numbers. */
function surenessText(answer: RecommendAnswer, best: RankedLayout): string {
  const { beatsRunnerUp, beatsMiddle, worlds } = best.confidence;
  const runnerUp = answer.layouts[1];
  const isUsual = best.text === answer.middle.text;
  const against = (share: number, whom: string): string =>
    `against ${whom} it scores higher in ${percent(share)} % (${verdict(share)})`;
  const parts = [
    ...(runnerUp ? [against(beatsRunnerUp, `the runner-up ${runnerUp.text}`)] : []),
    ...(isUsual ? [] : [against(beatsMiddle, `the usual ${answer.middle.text}`)]),
  ];
  const close = isUsual
    ? ' It is the usual middle layout itself: for this wish none does better on the mean.'
    : beatsMiddle < SLIGHTLY
      ? ' In short: no improvement on the usual layout that can be relied on.'
      : '';
  const compared = parts.length > 0 ? `, ${parts.join('; ')}` : '';
  return `How sure: over ${worlds} plausible worlds${compared}.${close}`;
}

const rankingNote = ({ objections }: SimulatedLayout, page: Page): string[] =>
  paragraph(
    '* the usual middle layout, to compare with. sure: share of worlds in which a layout scores above it. ' +
      'score: mean over all worlds; 100 is exactly the reaction asked for.' +
      (objections.length > 0 ? ` The usual layout would itself be set aside: ${objections.join('; ')}.` : ''),
    page,
    page.paint.quiet,
  );

function searchText({ search, seed, version }: RecommendAnswer): string {
  const rejected = search.rejected.map(({ reason, count }) => `${count} because ${reason}`).join(', ');
  return (
    `${search.candidates} layouts looked at, ${search.shots} shots simulated` +
    `${rejected ? `; set aside: ${rejected}` : ''}. ${regressionText(search.regression)} Seed ${seed}, flarewise ${version}.`
  );
}

function regressionText({
  notice,
  candidateWorlds,
  difference,
}: RecommendAnswer['search']['regression']): string {
  if (notice) return `${notice[0].toUpperCase()}${notice.slice(1)}.`;
  const differs = difference
    ? `; on the layouts listed it and physics differ by ${decimals(difference.typical, 1)} points of score (at most ${decimals(difference.worst, 1)})`
    : '';
  return `The fitted regression chose among all layouts from ${candidateWorlds} shots in plausible worlds${differs}. All numbers shown are by physics.`;
}
