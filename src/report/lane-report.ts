import type { LaneAnswer } from '../records/lane-answer.js';
import { decimals } from './figures.js';
import { oilDrawing } from './oil-drawing.js';
import type { Page } from './page.js';
import { withPlainText } from './plain-text.js';
import { bullets, joinSections, paragraph, section } from './section.js';
import { table } from './table.js';
import { wrap } from './wrap.js';

/** A lane as a screen of text: its oil drawn, what it says to a bowler, and friction at some places. */
export function laneReport(given: LaneAnswer, page: Page): string {
  const answer = withPlainText(given, page.ascii);
  const { lane } = answer;
  return joinSections([
    [
      ...wrap(`Oil on ${lane.name}`, page.width).map(page.paint.heading),
      ...(lane.note ? paragraph(lane.note, page) : []),
    ],
    oilDrawing(answer, page),
    section('In words', bullets(answer.says, page), page),
    section('Friction, a cover of 2000 grit', frictionTable(answer, page), page),
    section('Assumed', bullets(answer.assumptions, page), page),
  ]);
}

const frictionTable = ({ friction, hand }: LaneAnswer, page: Page): string[] =>
  table(
    [
      { head: `ft, board\nfrom the ${hand}` },
      ...friction[0].boards.map(({ board }) => ({ head: `\n${board}` })),
    ],
    friction.map(({ distanceFt, boards }) => [
      `${distanceFt}`,
      ...boards.map((place) => decimals(place.friction, 3)),
    ]),
    page,
  );
