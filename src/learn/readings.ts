import { FOOT, from, INCH, to } from '../base/units.js';
import { xToBoard } from '../motion/lane/boards.js';
import { meanReaction, reactionNumbers } from '../motion/reaction/reaction.js';
import type { LeanShot } from '../motion/shot/shot.js';
import { READING_IDS } from '../records/schemas/shot-log.js';
import type { ReadingErrors } from '../records/shared/reading-errors.js';
import type { RolledShot } from '../simulate/simulator.js';
import { arrowsBoard, boardCrossed } from '../simulate/usual-line.js';

/** The readings of a shot that are learned from. Display speed is not among them, since displays measure at different places. */
export const READ = READING_IDS.filter((id) => id !== 'displaySpeedMph');

export type ReadId = (typeof READ)[number];

/** The error of a reading, one standard deviation of each part, in the reading's unit. */
interface ReadingError {
  /** From shot to shot: which of the bowler's reading errors it is. */
  readonly ofShot: keyof ReadingErrors;
  /** From night to night, and the same on every night: neither averages out over the shots of a night. */
  readonly ofNight: number;
  readonly always: number;
}

/**
 * A person who reads one board too high does so on the next shot too, and the engine has systematic errors as well: together about half a
 * board and a foot. Flare ends with the last faint oil, which a tape does not find twice in the same place. Assumed, no source.
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

/** The readings that a person would take of a shot, in the order of `READ`; means over spin phases if the shot's phase is not drawn. */
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

/** The board that a shot crossed, or the one where it ended if it never got there. */
const reached = ({ x }: LeanShot, board: number): number =>
  Number.isNaN(board) ? xToBoard(x[x.length - 1]) : board;
