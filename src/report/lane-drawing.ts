import { BOARD_COUNT } from '../constants.js';
import type { PathPoint, ReactionAnswer } from '../records/answer.js';
import type { Lane } from '../records/lane.js';
import { boardAt } from './board-at.js';
import { boardColumn, boardScale, pinDeck, pocketColumns } from './lane-columns.js';
import { pathNotes, spreadNotes } from './lane-notes.js';
import { filmAt } from './oil-film.js';
import { type Glyphs, glyphs, type Page } from './page.js';
import { paragraph } from './section.js';
import { flow, wrap } from './wrap.js';

/** One simulated shot, as it is drawn. Boards count from the bowler's own side. */
export interface DrawnShot {
  readonly hand: 'right' | 'left';
  readonly lane: Lane;
  readonly line: {
    readonly laydownBoard: number;
    readonly reachesPocket: boolean;
  };
  readonly path: readonly PathPoint[];
  readonly reaction: ReactionAnswer;
}

const LENGTH_FT = 60;
const FEET_PER_ROW = 3;
const FEET_PER_LABEL = 15;
/** Film thickness from which oil is drawn as heavy and as thin, units (our own choice). */
const HEAVY_UNITS = 25;
const THIN_UNITS = 2;
const NO_POCKET = 'No line was found that brings this ball to the pocket; the nearest one is drawn.';
const LEFT = '     ';
const LAST_ROW = LENGTH_FT / FEET_PER_ROW;
const rowOf = (ft: number): number => Math.round((LENGTH_FT - ft) / FEET_PER_ROW);
/** Notes beside the lane: columns they need, and columns they use at most. */
const NARROWEST_NOTE = 28;
const WIDEST_NOTE = 40;
const LEGEND_COLUMNS = 80;

/**
 * The lane seen from above, pins at the top, one column a board and one row three feet.
 *
 * The path's glyph says its phase, so that colour is not needed. Notes stand beside the row they speak of
 * where there is room, else below.
 */
export function laneDrawing(shot: DrawnShot, page: Page): string[] {
  const signs = glyphs(page);
  const noteRoom = Math.min(WIDEST_NOTE, page.width - LEFT.length - BOARD_COUNT - 2 - 2);
  const notes = pathNotes(shot, page);
  const beside = noteRoom >= NARROWEST_NOTE ? spreadNotes(notes, noteRoom, rowOf) : new Map<number, string>();

  const rows: string[] = pinDeck().map((pins, i, deck) => {
    const cells = [...pins];
    if (i === deck.length - 1)
      for (const column of pocketColumns(shot.hand)) cells[column] = page.paint.strong(signs.pocket);
    return `${LEFT} ${cells.join('')}`;
  });
  for (let row = 0; row <= LAST_ROW; row += 1) {
    const ft = LENGTH_FT - row * FEET_PER_ROW;
    const label = ft % FEET_PER_LABEL === 0 ? `${ft}`.padStart(2) : '  ';
    const note = beside.get(row);
    const line = `${page.paint.quiet(`  ${label} `)}${laneRow(shot, ft, page)}`;
    rows.push(note ? `${line}  ${note}` : line);
  }
  rows.push(page.paint.quiet(`  ft  ${boardScale(shot.hand)}  board`));
  rows.push('', ...legend(signs, shot, page));
  if (beside.size === 0) rows.push('', ...notes.flatMap(({ text }) => wrap(text, page.width, '  ')));
  if (!shot.line.reachesPocket) rows.push('', ...paragraph(NO_POCKET, page, page.paint.caution));
  return rows.map((line) => line.trimEnd());
}

/** One row of boards between the lane's edges: oil, and the path over it. */
function laneRow(shot: DrawnShot, ft: number, page: Page): string {
  const { edge, heavyOil, thinOil } = glyphs(page);
  const cells = [edge];
  for (let column = 0; column < BOARD_COUNT; column += 1) {
    const units = filmAt(shot.lane, ft, BOARD_COUNT - column - 0.5);
    cells.push(units >= HEAVY_UNITS ? heavyOil : units >= THIN_UNITS ? thinOil : ' ');
  }
  cells.push(edge);
  const quiet = (from: number, to?: number): string => page.paint.quiet(cells.slice(from, to).join(''));

  const board = boardAt(shot.path, ft);
  if (board === null) return quiet(0);
  const at = 1 + Math.min(BOARD_COUNT, Math.max(-1, boardColumn(board, shot.hand))); // a gutter is the edge's column
  return quiet(0, at) + phaseGlyph(shot.reaction, ft, page) + quiet(at + 1);
}

function phaseGlyph(reaction: ReactionAnswer, ft: number, page: Page): string {
  const signs = glyphs(page);
  if (ft < reaction.hookStartFt) return page.paint.skid(signs.skid);
  if (ft < reaction.rollStartFt || !reaction.rollsBeforePins) return page.paint.hook(signs.hook);
  return page.paint.roll(signs.roll);
}

const legend = (signs: Glyphs, { hand, lane }: DrawnShot, page: Page): string[] =>
  flow(
    [
      `${signs.skid} skid`,
      `${signs.hook} hook`,
      `${signs.roll} roll`,
      `${signs.pocket} pocket`,
      `${signs.heavyOil} heavy oil`,
      `${signs.thinOil} thin oil`,
      ...(lane.games ? [`oil as laid, before ${lane.games} games`] : []),
      `boards count from the ${hand}`,
    ],
    Math.min(page.width, LEGEND_COLUMNS),
    '  ',
  );
