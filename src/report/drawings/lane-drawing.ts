import { BOARD_COUNT } from '../../base/constants.js';
import type { Lane } from '../../records/schemas/lane.js';
import { boardAt } from '../lane/board-at.js';
import { ARROWS, LENGTH_FT } from '../lane/lane-marks.js';
import { drawnFilm } from '../lane/oil-film.js';
import { withUnit } from '../text/display-units.js';
import { type Glyphs, glyphs, type Page } from '../text/page.js';
import { paragraph } from '../text/section.js';
import { flow, wrap } from '../text/wrap.js';
import { phaseAt } from '../wording/phases.js';
import { apartDrawing, widestGap } from './apart-drawing.js';
import type { DrawnShot } from './drawn-shot.js';
import { apartText, drawnApartText } from './lane-apart.js';
import { boardColumn, boardScale, fineColumn, pinDeck, pocketColumns } from './lane-columns.js';
import { pathNotes, spreadNotes } from './lane-notes.js';
import { oilLegend, oilSign } from './oil-sign.js';

/** Shots on one lane; remarks are about the first. Paths that share their boards are drawn as differences. */
export interface DrawnLane {
  readonly hand: 'right' | 'left';
  readonly lane: Lane;
  readonly shots: readonly DrawnShot[];
}

const FEET_PER_ROW = 3;
const FEET_PER_LABEL = 15;
/** Every few rows, the paths' signs replace those of their phases. */
const ROWS_PER_SIGN = 3;
const NO_POCKET = 'No line was found that brings this ball to the pocket; the nearest one is drawn.';
const LEFT = '     ';
/** Columns that distances, edges and boards take at least. */
const NEEDED_COLUMNS = LEFT.length + 2 + BOARD_COUNT;
const TOO_NARROW = `The lane is drawn where ${NEEDED_COLUMNS} columns or more have room.`;
const LAST_ROW = LENGTH_FT / FEET_PER_ROW;
const rowOf = (ft: number): number => Math.round((LENGTH_FT - ft) / FEET_PER_ROW);
/** Notes beside the lane: columns they need, and columns they use at most. */
const NARROWEST_NOTE = 28;
const WIDEST_NOTE = 40;
const LEGEND_COLUMNS = 80;

/** Columns beside the lane that a board may not take: distances, edges, and the gap before the notes. */
const AROUND = LEFT.length + 2 + 2;

/** Paths that nowhere part farther than this lie on one another on a drawing by whole boards. */
const SHARED_BOARDS = 3;

/**
 * The lane seen from above, pins at the top; one row is three feet, one column a board, or two columns where there is room.
 *
 * A path's glyph says its phase, and every third row which path it is, so that colour is not needed. Notes stand beside
 * the row they speak of where there is room, else below. Of several paths that share their boards the first alone is drawn, and the
 * others below by their differences from it.
 */
export function laneDrawing({ hand, lane, shots: all }: DrawnLane, page: Page): string[] {
  const areShared = all.length > 1 && widestGap(all) < SHARED_BOARDS;
  const shots = areShared ? all.slice(0, 1) : all;
  const drawn = { hand, lane, shots };
  const [first] = shots;
  const signs = glyphs(page);
  const perBoard = page.width >= AROUND + 2 * BOARD_COUNT + NARROWEST_NOTE ? 2 : 1;
  const noteRoom = Math.min(WIDEST_NOTE, page.width - AROUND - perBoard * BOARD_COUNT);
  const notes = pathNotes(first, page);
  const beside = noteRoom >= NARROWEST_NOTE ? spreadNotes(notes, noteRoom, rowOf) : new Map<number, string>();

  const picture: string[] = pinDeck(perBoard).map((pins, i, deck) => {
    const cells = [...pins];
    if (i === deck.length - 1)
      for (const column of pocketColumns(hand, perBoard)) cells[column] = page.paint.strong(signs.pocket);
    return `${LEFT} ${cells.join('')}`;
  });
  for (let row = 0; row <= LAST_ROW; row += 1) {
    const ft = LENGTH_FT - row * FEET_PER_ROW;
    const label = ft % FEET_PER_LABEL === 0 ? page.units.laneMark.show(ft) : '';
    const note = beside.get(row);
    const isSigned = shots.length > 1 && row % ROWS_PER_SIGN === 1;
    const line = `${page.paint.quiet(`${label.padStart(LEFT.length - 1)} `)}${laneRow(drawn, ft, isSigned, perBoard, page)}`;
    picture.push(note ? `${line}  ${note}` : line);
  }
  picture.push(
    page.paint.quiet(
      `${page.units.laneMark.name.padStart(LEFT.length - 1)}  ${boardScale(hand, perBoard)}  board`,
    ),
  );
  picture.push('', ...legend(signs, drawn, page));
  const isDrawn = page.width >= NEEDED_COLUMNS;
  const rows = isDrawn
    ? picture
    : [...paragraph(TOO_NARROW, page), ...(areShared ? [] : ['', ...signsOf(shots, page)])];
  if (shots.length > 1) rows.push(...paragraph(drawnApartText(shots, page.units), page, page.paint.quiet));
  if (beside.size === 0) rows.push('', ...notes.flatMap(({ text }) => wrap(text, page.width, '  ')));
  if (!first.line.reachesPocket) rows.push('', ...paragraph(NO_POCKET, page, page.paint.caution));
  if (areShared) rows.push('', ...apartRows(all, hand, page));
  return rows.map((line) => line.trimEnd());
}

/** Paths that lie nearer to one another than this, boards, are one path to the eye. */
const ONE_PATH = 1;

/** How far paths lie from the first: in words where they are one to the eye, else drawn below their names. */
function apartRows(shots: DrawnLane['shots'], hand: DrawnLane['hand'], page: Page): string[] {
  const gap = widestGap(shots);
  const most = withUnit(gap, page.units.boards);
  if (gap < ONE_PATH)
    return [
      ...paragraph(`Above is the path of ${shots[0]?.sign}: the others lie within ${most} of it.`, page),
      ...signsOf(shots, page),
    ];
  return [
    ...paragraph(
      `Above is the path of ${shots[0]?.sign} alone: the others lie within ${most} of it and would cover it. How far each lies from it:`,
      page,
    ),
    ...apartDrawing(shots, hand, page),
    ...signsOf(shots, page),
    ...paragraph(apartText(shots, page.units), page, page.paint.quiet),
  ];
}

/** Which path each sign stands for. */
const signsOf = (shots: DrawnLane['shots'], page: Page): string[] =>
  flow(
    shots.map(({ sign, text }) => `${sign} ${text}`),
    Math.min(page.width, LEGEND_COLUMNS),
    '  ',
  );

type Brush = (text: string) => string;

/** One row of boards between the lane's edges: oil, arrows, and the paths over them, the first on top. */
function laneRow(
  { hand, lane, shots }: DrawnLane,
  ft: number,
  isSigned: boolean,
  perBoard: number,
  page: Page,
): string {
  const signs = glyphs(page);
  const { quiet, strong } = page.paint;
  const film = drawnFilm(lane);
  const cells: { text: string; brush: Brush }[] = [{ text: signs.edge, brush: quiet }];
  for (let column = 0; column < BOARD_COUNT; column += 1) {
    const text = oilSign(film(ft, BOARD_COUNT - column - 0.5), page);
    for (let i = 0; i < perBoard; i += 1) cells.push({ text, brush: quiet });
  }
  cells.push({ text: signs.edge, brush: quiet });

  for (const arrow of ARROWS)
    if (FEET_PER_ROW * Math.round(arrow.ft / FEET_PER_ROW) === ft)
      cells[1 + boardColumn(arrow.board, hand) * perBoard] = { text: '^', brush: strong };
  for (const { sign, path, reaction } of [...shots].reverse()) {
    const board = boardAt(path, ft);
    if (board === null) continue;
    const phase = phaseAt(reaction, ft);
    const text = isSigned ? sign : signs[phase];
    cells[1 + fineColumn(board, hand, perBoard)] = { text, brush: isSigned ? strong : page.paint[phase] };
  }
  return painted(cells);
}

/** Cells side by side; those that follow one another in one look are painted at once. */
function painted(cells: readonly { readonly text: string; readonly brush: Brush }[]): string {
  const runs: { text: string; brush: Brush }[] = [];
  for (const { text, brush } of cells) {
    const last = runs.at(-1);
    if (last?.brush === brush) last.text += text;
    else runs.push({ text, brush });
  }
  return runs.map(({ text, brush }) => brush(text)).join('');
}

function legend(signs: Glyphs, { hand, lane, shots }: DrawnLane, page: Page): string[] {
  const columns = Math.min(page.width, LEGEND_COLUMNS);
  const others = [
    `${signs.skid} skid`,
    `${signs.hook} hook`,
    `${signs.roll} roll`,
    `${signs.pocket} pocket`,
    '^ aiming arrow',
    ...(lane.games ? [`oil as laid, before ${lane.games} games`] : []),
    `boards count from the ${hand}`,
    ...oilLegend(page),
  ];
  return [...(shots.length > 1 ? signsOf(shots, page) : []), ...flow(others, columns, '  ')];
}
