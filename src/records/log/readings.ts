import { readingErrorsOf } from '../schemas/reading-errors.js';
import {
  isAgainstTarget,
  type LoggedShot,
  type Night,
  READING_IDS,
  type ReadingId,
  shotSchema,
} from '../schemas/shot-log.js';
import type { ReadingErrors } from '../shared/reading-errors.js';

/** What a reading is called, and what it is measured in. */
interface Reading {
  /** As it appears after `the`; a number in braces is in the trade's unit of the quantity behind it. */
  readonly name: string;
  /** As it stands above a column, with a line break; numbers as in `name`. */
  readonly head: string;
  /** Which of the units a person reads it is typed and shown in (`report/text/display-units.ts`). */
  readonly quantity: 'boards' | 'lane' | 'speed' | 'flare';
  /** How far off it may be. */
  readonly error: keyof ReadingErrors;
}

const board = (name: string, head: string, error: keyof ReadingErrors): Reading => ({
  name,
  head,
  quantity: 'boards',
  error,
});

/** What each is. */
export const READINGS: Readonly<Record<ReadingId, Reading>> = {
  laydownBoard: board('laydown board', 'laid\ndown', 'laydownBoards'),
  arrowsBoard: board('board at the arrows', 'at\narrows', 'arrowsReadOffBoards'),
  breakpointBoard: board('board of the breakpoint', 'break-\npoint', 'breakpointBoards'),
  breakpointFt: {
    name: 'distance of the breakpoint',
    head: 'down the\nlane',
    quantity: 'lane',
    error: 'breakpointFt',
  },
  boardAt50Ft: board('board at {50 laneMark}', 'at\n{50 laneMark}', 'boardsAt50Ft'),
  pinsBoard: board('board at the pins', 'at\npins', 'pinsBoards'),
  displaySpeedMph: {
    name: 'display speed',
    head: 'display\nspeed',
    quantity: 'speed',
    error: 'displaySpeedMph',
  },
  flareIn: { name: 'flare', head: '\nflare', quantity: 'flare', error: 'flareIn' },
};

/** The boards of a line, in its order. */
export const LINE_READINGS = ['laydownBoard', 'arrowsBoard', 'breakpointBoard', 'pinsBoard'] as const;

/** The readings that count boards from a side of the lane. */
export const BOARD_READINGS = READING_IDS.filter((id) => READINGS[id].quantity === 'boards');

/** What a record asks of each. */
export const readingSchema = (id: ReadingId) => shotSchema.shape[id].unwrap();

/** How far off a reading of a shot may be, one standard deviation, in the reading's own unit. */
export function readingError(
  id: ReadingId,
  shot: LoggedShot,
  head: Pick<Night, 'targetBoard' | 'readingErrors'>,
): number {
  const errors = readingErrorsOf(head);
  return id === 'arrowsBoard' && isAgainstTarget(shot, head)
    ? errors.arrowsAgainstTargetBoards
    : errors[READINGS[id].error];
}
