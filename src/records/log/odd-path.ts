import { ARROWS_FT, BOARD } from '../../base/constants.js';
import { DEGREE, FOOT, from, to } from '../../base/units.js';
import { atan2 } from '../../math/atan.js';
import { hypot } from '../../math/hypot.js';
import type { Oddity } from '../answers/statements/log-remarks.js';
import type { LoggedShot } from '../schemas/shot-log.js';
import type { ReadingErrors } from '../shared/reading-errors.js';
import { loadPractice } from '../shared/shared-data.js';

/*
 * Whether a ball can have gone where a log says. Geometry alone: a ball that hooks never goes farther out than the line on which it was
 * sent, is farthest out at its breakpoint, and comes back in. What readings may be off is allowed for three times over.
 */

const PINS_FT = 60;

/** How many standard deviations of its readings a path may be off. */
const SURELY = 3;

/** Steepest that a ball is sent inward, and that it comes in anywhere (a choice of this project; far beyond what is bowled). */
const MOST_INWARD_DEG = 3;
const MOST_TURN_DEG = 12;

/** A ball that ends in the gutter was never farther in at its breakpoint (a choice of this project). */
const GUTTER_BREAKPOINT = 5;

/** Farther down than this no breakpoint is looked for, ft. */
const LAST_BREAKPOINT_FT = 55;

/** @param arrowsError  standard deviation of the board at the arrows, as it was read */
export function oddPath(shot: LoggedShot, errors: ReadingErrors, arrowsError: number): readonly Oddity[] {
  const { laydownBoard, arrowsBoard, breakpointBoard, breakpointFt, boardAt50Ft, pinsBoard, gutter } = shot;
  const found: Oddity[] = [];
  if (laydownBoard !== undefined && arrowsBoard !== undefined) {
    const deviations = { laydown: errors.laydownBoards, arrows: arrowsError };
    found.push(...oddLaunch(laydownBoard, arrowsBoard, deviations));
    found.push(...oddBend(shot, { laydownBoard, arrowsBoard }, errors, deviations));
  }
  if (breakpointBoard !== undefined) found.push(...oddBreakpoint(shot, breakpointBoard, errors, arrowsError));
  if (gutter && breakpointBoard !== undefined && breakpointBoard > GUTTER_BREAKPOINT)
    found.push({ code: 'gutter-from-inside', params: { breakpointBoard } });
  if (breakpointFt !== undefined)
    found.push(...oddTurn('breakpoint', breakpointBoard, pinsBoard, breakpointFt));
  found.push(...oddTurn('at-50', boardAt50Ft, pinsBoard, 50));
  // one cause shows in several ways: a path that bends outward says the most
  const bends = found.filter(({ code }) => code === 'bends-outward');
  return bends.length > 0 ? bends : found;
}

interface LineDeviations {
  readonly laydown: number;
  readonly arrows: number;
}

/** Where a ball that goes straight on is after this many feet, and how far off that may be. */
const straightAt = (laydown: number, arrows: number, ft: number): number =>
  laydown + (arrows - laydown) * (ft / ARROWS_FT);
const straightError = ({ laydown, arrows }: LineDeviations, ft: number): number =>
  hypot((ft / ARROWS_FT - 1) * laydown, (ft / ARROWS_FT) * arrows);

/** Direction of this many boards over this many feet, degrees. */
const degrees = (boards: number, ft: number): number => to(atan2(boards * BOARD, from(ft, FOOT)), DEGREE);

function oddLaunch(laydownBoard: number, arrowsBoard: number, deviations: LineDeviations): readonly Oddity[] {
  const boards = laydownBoard - arrowsBoard;
  const room = degrees(SURELY * hypot(deviations.laydown, deviations.arrows), ARROWS_FT);
  const toward = boards > 0 ? 'outside' : 'inside';
  const mostDeg = toward === 'outside' ? loadPractice().line.launchDeg.farthest : MOST_INWARD_DEG;
  const angleDeg = Math.abs(degrees(boards, ARROWS_FT));
  return angleDeg - room > mostDeg
    ? [{ code: 'sent-too-far', params: { laydownBoard, arrowsBoard, toward, angleDeg, mostDeg } }]
    : [];
}

/** Whether the ball ends farther out than straight on. */
function oddBend(
  { pinsBoard }: LoggedShot,
  { laydownBoard, arrowsBoard }: { readonly laydownBoard: number; readonly arrowsBoard: number },
  errors: ReadingErrors,
  deviations: LineDeviations,
): readonly Oddity[] {
  if (pinsBoard === undefined) return [];
  const straightBoard = straightAt(laydownBoard, arrowsBoard, PINS_FT);
  const room = SURELY * hypot(straightError(deviations, PINS_FT), errors.pinsBoards);
  return pinsBoard < straightBoard - room
    ? [{ code: 'bends-outward', params: { laydownBoard, arrowsBoard, straightBoard, pinsBoard } }]
    : [];
}

function oddBreakpoint(
  shot: LoggedShot,
  breakpointBoard: number,
  errors: ReadingErrors,
  arrowsError: number,
): readonly Oddity[] {
  const places = [
    ['laydown', shot.laydownBoard, errors.laydownBoards],
    ['arrows', shot.arrowsBoard, arrowsError],
    ['at-50', shot.boardAt50Ft, errors.boardsAt50Ft],
    ['pins', shot.pinsBoard, errors.pinsBoards],
  ] as const;
  for (const [place, board, error] of places)
    if (board !== undefined && breakpointBoard > board + SURELY * hypot(errors.breakpointBoards, error))
      return [{ code: 'breakpoint-not-outermost', params: { breakpointBoard, place, board } }];
  const { laydownBoard, arrowsBoard, breakpointFt } = shot;
  if (laydownBoard === undefined || arrowsBoard === undefined) return [];
  const straightFt = breakpointFt ?? LAST_BREAKPOINT_FT;
  const straightBoard = straightAt(laydownBoard, arrowsBoard, straightFt);
  const lineError = straightError({ laydown: errors.laydownBoards, arrows: arrowsError }, straightFt);
  const slope = Math.abs(arrowsBoard - laydownBoard) / ARROWS_FT;
  const room = SURELY * hypot(lineError, errors.breakpointBoards, slope * errors.breakpointFt);
  return breakpointBoard < Math.min(straightBoard, laydownBoard) - room
    ? [{ code: 'breakpoint-past-line', params: { breakpointBoard, straightBoard, straightFt } }]
    : [];
}

/** Whether a ball comes in more steeply than any does, between a place and the pins. */
function oddTurn(
  place: 'breakpoint' | 'at-50',
  board: number | undefined,
  pinsBoard: number | undefined,
  ft: number,
): readonly Oddity[] {
  if (board === undefined || pinsBoard === undefined) return [];
  const angleDeg = degrees(pinsBoard - board, Math.max(PINS_FT - ft, 1));
  return angleDeg > MOST_TURN_DEG
    ? [{ code: 'turns-too-much', params: { place, angleDeg, mostDeg: MOST_TURN_DEG } }]
    : [];
}
