import { FOOT, from, INCH, to } from '../base/units.js';
import { xToBoard } from '../motion/lane/boards.js';
import { meanReaction, reactionNumbers } from '../motion/reaction/reaction.js';
import type { LeanShot } from '../motion/shot/shot.js';
import { READING_IDS } from '../records/schemas/shot-log.js';
import type { ReadingErrors } from '../records/shared/reading-errors.js';
import type { RolledShot } from '../simulate/simulator.js';
import { arrowsBoard, boardCrossed } from '../simulate/usual-line.js';

/**
 * What is learned from, of a shot. The speed on a display is not: displays measure at different places. Nor are readings by eye, which
 * nothing says the error of.
 */
export const READ = READING_IDS.filter((id) => id !== 'displaySpeedMph');

export type ReadId = (typeof READ)[number];

/** How a reading errs, one standard deviation of each part, in its own unit. */
interface ReadingError {
  /** From shot to shot. */
  readonly ofShot: keyof ReadingErrors;
  /** From night to night, and on every night: it does not average out over shots. */
  readonly ofNight: number;
  readonly always: number;
}

/**
 * A person who reads a board too high does so on the next shot too, and the engine is off by as much on each: together half a board and a
 * foot, which neither can vouch for. Flare ends with the last faint oil, which no tape finds twice. Assumed, no source.
 */
export const READING_ERROR: Readonly<Record<ReadId, ReadingError>> = {
  laydownBoard: { ofShot: 'laydownBoards', ofNight: 0.2, always: 0.2 },
  arrowsBoard: { ofShot: 'arrowsAgainstTargetBoards', ofNight: 0.25, always: 0.4 },
  breakpointBoard: { ofShot: 'breakpointBoards', ofNight: 0.35, always: 0.5 },
  breakpointFt: { ofShot: 'breakpointFt', ofNight: 0.7, always: 1 },
  boardAt50Ft: { ofShot: 'boardsAt50Ft', ofNight: 0.35, always: 0.5 },
  pinsBoard: { ofShot: 'pinsBoards', ofNight: 0.35, always: 0.4 },
  flareIn: { ofShot: 'flareIn', ofNight: 0.2, always: 0.2 },
};

const FIFTY_FT = from(50, FOOT);

/** What a person would read of a shot, in the order of `READ`; of one without a spin phase of its own the mean over phases. */
export function readingsOf({ shot, opposite }: RolledShot, radius: number): Float64Array {
  const other = opposite?.();
  const isAlike = other?.outcome === shot.outcome;
  const shots = isAlike ? [shot, other] : [shot];
  const meanOf = (of: (shot: LeanShot) => number): number =>
    shots.reduce((sum, each) => sum + of(each), 0) / shots.length;
  const [first, second] = shots.map((each) => reactionNumbers(each, radius));
  const reaction = second ? meanReaction(first, second) : first;
  return Float64Array.of(
    meanOf(({ x }) => xToBoard(x[0])),
    meanOf((each) => reached(each, arrowsBoard(each))),
    xToBoard(reaction.breakpointX),
    to(reaction.breakpointY, FOOT),
    meanOf((each) => reached(each, boardCrossed(each, FIFTY_FT))),
    xToBoard(reaction.pinsX),
    to(reaction.flare, INCH),
  );
}

/** A board that a shot crossed, or the one where it ended before. */
const reached = ({ x }: LeanShot, board: number): number =>
  Number.isNaN(board) ? xToBoard(x[x.length - 1]) : board;
