import { BOARD } from '../base/constants.js';
import { DEGREE, FOOT, INCH, MPH, RPM, to } from '../base/units.js';
import { xToBoard } from '../motion/lane/boards.js';
import type { Reaction } from '../motion/reaction/reaction.js';
import {
  NUMBER_OF_WISH,
  type ReactionId,
  type Wish,
  type WishedId,
} from '../records/schemas/reaction-numbers.js';
import type { Outcome } from './simulator.js';

/** The part of an outcome that a score depends on, from either engine. */
export interface Reached {
  readonly shot: Outcome['shot'];
  readonly reaction: Pick<Reaction, 'hookStart' | 'sharpness' | 'totalHook' | 'entryAngle'>;
}

/** The part of an outcome that holds all reaction numbers except ring clearance. */
export interface Readable {
  readonly shot: Outcome['shot'];
  readonly reaction: Reaction;
}

/** How a reaction number is read, in SI, and how it is converted to the unit of answers. */
interface Reading<Source> {
  readonly of: (source: Source) => number;
  readonly inUnit: (si: number) => number;
}

const as =
  (unit: number) =>
  (si: number): number =>
    to(si, unit);

/** How each reaction number is read from an outcome. Those that can be wished for need only `Reached`. */
const READINGS: {
  readonly [K in ReactionId]: Reading<
    K extends WishedId ? Reached : K extends 'ringClearanceIn' ? Outcome : Readable
  >;
} = {
  hookStartFt: { of: ({ reaction }) => reaction.hookStart, inUnit: as(FOOT) },
  rollStartFt: { of: ({ reaction }) => reaction.rollStart, inUnit: as(FOOT) },
  sharpnessDegPerFt: { of: ({ reaction }) => reaction.sharpness, inUnit: as(DEGREE / FOOT) },
  breakpointFt: { of: ({ reaction }) => reaction.breakpointY, inUnit: as(FOOT) },
  breakpointBoard: { of: ({ reaction }) => reaction.breakpointX, inUnit: xToBoard },
  totalHookBoards: { of: ({ reaction }) => reaction.totalHook, inUnit: as(BOARD) },
  entryAngleDeg: { of: ({ reaction }) => reaction.entryAngle, inUnit: as(DEGREE) },
  pinsBoard: { of: ({ reaction }) => reaction.pinsX, inUnit: xToBoard },
  flareIn: { of: ({ reaction }) => reaction.flare, inUnit: as(INCH) },
  ringClearanceIn: { of: ({ ringClearance }) => ringClearance, inUnit: as(INCH) },
  turns: { of: ({ reaction }) => reaction.turns, inUnit: as(1) },
  speedAtPinsMph: { of: ({ reaction }) => reaction.speedAtPins, inUnit: as(MPH) },
  revRateAtPinsRpm: { of: ({ reaction }) => reaction.spinAtPins, inUnit: as(RPM) },
};

/** Reads a number of an outcome, in the unit of answers. */
export const reader = <K extends ReactionId>(
  id: K,
): ((outcome: K extends 'ringClearanceIn' ? Outcome : Readable) => number) => {
  const { of, inUnit } = READINGS[id] as Reading<Readable>;
  return (outcome) => inUnit(of(outcome));
};

/** The number a wish is about, in SI. */
export const wishedNumber = (wish: Wish, reached: Reached): number =>
  READINGS[NUMBER_OF_WISH[wish]].of(reached);

/** That number in the unit of answers. */
export const wishedInUnit = (wish: Wish, si: number): number => READINGS[NUMBER_OF_WISH[wish]].inUnit(si);
