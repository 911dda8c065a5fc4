import { BOARD_COUNT } from '../../base/constants.js';
import type { LaneAnswer } from '../../records/answers/lane-answer.js';
import { ARROWS, LENGTH_FT } from '../lane/lane-marks.js';
import { glyphs, type Page } from '../text/page.js';
import { paragraph } from '../text/section.js';
import { flow } from '../text/wrap.js';
import { boardColumn, boardScale } from './lane-columns.js';
import { oilLegend, oilSign } from './oil-sign.js';

const FEET_PER_ROW = 2;
const FEET_PER_LABEL = 10;
const MARGIN = 5; // columns of the distances, left of the lane
const TOO_NARROW = `The oil is drawn where ${MARGIN + 2 + BOARD_COUNT} columns or more have room.`;

/** Room that a remark beside the lane needs at most, with its gap. */
const NOTE_ROOM = 26;

/**
 * Oil seen from above, pins end at the top: a character shows how thick the film is, so that colour is not needed.
 *
 * A column is a board, two columns on a wide page; a row is two feet.
 */
export function oilDrawing({ film, lane, hand }: LaneAnswer, page: Page): string[] {
  const width = page.width >= MARGIN + 2 + 2 * BOARD_COUNT + NOTE_ROOM ? 2 : 1;
  const { edge } = glyphs(page);
  const rows: string[] = [];
  for (let ft = LENGTH_FT; ft >= 0; ft -= FEET_PER_ROW) {
    const cells = Array.from({ length: BOARD_COUNT }, () => ' ');
    const { units } = film[ft];
    units.forEach((value, i) => {
      cells[boardColumn(i + 1, hand)] = oilSign(value, page);
    });
    const drawn = cells.map((sign) => sign.repeat(width));
    for (const arrow of ARROWS)
      if (rowOf(arrow.ft) === ft)
        drawn[boardColumn(arrow.board, hand)] =
          page.paint.strong('^') + drawn[boardColumn(arrow.board, hand)].slice(1);
    const label = ft % FEET_PER_LABEL === 0 ? page.units.laneMark.show(ft) : '';
    const note = noteAt(ft, lane.patternFt);
    rows.push(
      `${page.paint.quiet(`${label.padStart(MARGIN - 1)} `)}${edge}${drawn.join('')}${edge}${note ? ` ${note}` : ''}`,
    );
  }
  rows.push(
    page.paint.quiet(`${page.units.laneMark.name.padStart(MARGIN - 1)}  ${boardScale(hand, width)} board`),
  );
  return page.width < MARGIN + 2 + BOARD_COUNT
    ? paragraph(TOO_NARROW, page)
    : [...rows, '', ...legend(page, hand)];
}

const rowOf = (ft: number): number => FEET_PER_ROW * Math.round(ft / FEET_PER_ROW);

function noteAt(ft: number, patternFt: number): string {
  const notes = [
    ...(ft === rowOf(patternFt) ? ['oil ends'] : []),
    ...(ft === rowOf(15) ? ['arrows'] : []),
    ...(ft === 0 ? ['foul line'] : []),
  ];
  return notes.length > 0 ? `< ${notes.join(', ')}` : '';
}

function legend(page: Page, hand: 'right' | 'left'): string[] {
  return flow(
    [...oilLegend(page), '^ aiming arrow', `boards count from the ${hand}`],
    Math.min(page.width, 80),
    '  ',
  );
}
