import type { LaneAnswer } from '../../records/answers/lane-answer.js';
import { oilDrawing } from '../drawings/oil-drawing.js';
import { decimals } from '../text/figures.js';
import type { Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { bullets, joinSections, paragraph, section } from '../text/section.js';
import { table } from '../text/table.js';
import { wrap } from '../text/wrap.js';
import { sayAll } from '../wording/say.js';

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
    section('In words', bullets(sayAll(answer.says, page.units), page), page),
    section('Friction, a cover of 2000 grit', frictionTable(answer, page), page),
    section('Assumed', bullets(sayAll(answer.assumptions, page.units), page), page),
  ]);
}

function frictionTable({ friction, hand }: LaneAnswer, page: Page): string[] {
  const { laneMark } = page.units;
  return table(
    [
      { head: `${laneMark.name}, board\nfrom the ${hand}` },
      ...friction[0].boards.map(({ board }) => ({ head: `\n${board}` })),
    ],
    friction.map(({ distanceFt, boards }) => [
      laneMark.show(distanceFt),
      ...boards.map((place) => decimals(place.friction, 3)),
    ]),
    page,
  );
}
