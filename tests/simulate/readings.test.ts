import { expect, test } from 'vitest';
import { BOARD, LANE_WIDTH } from '../../src/base/constants.js';
import { DEGREE, FOOT, INCH, MPH, RPM } from '../../src/base/units.js';
import type { Reaction } from '../../src/motion/reaction/reaction.js';
import {
  NUMBER_OF_WISH,
  REACTION_IDS,
  type ReactionId,
  WISHES,
} from '../../src/records/schemas/reaction-numbers.js';
import { reader, wishedInUnit, wishedNumber } from '../../src/simulate/readings.js';
import type { Outcome } from '../../src/simulate/simulator.js';

/** Every number is another one, so that none is taken for its neighbour. */
const reaction: Reaction = {
  hookStart: 38 * FOOT,
  rollStart: 52 * FOOT,
  rollsBeforePins: true,
  sharpness: (0.3 * DEGREE) / FOOT,
  breakpointY: 43 * FOOT,
  breakpointX: LANE_WIDTH / 2 - 7.5 * BOARD,
  totalHook: 12 * BOARD,
  entryAngle: 5 * DEGREE,
  pinsX: LANE_WIDTH / 2 - 17 * BOARD,
  flare: 4 * INCH,
  turns: 11,
  speedAtPins: 15 * MPH,
  spinAtPins: 340 * RPM,
  tiltAtPins: 0.1,
  rotationAtPins: 0.2,
};

const outcome = { shot: 'pins', reaction, ringClearance: 0.75 * INCH } as Outcome;

const WANT: Readonly<Record<ReactionId, number>> = {
  hookStartFt: 38,
  rollStartFt: 52,
  sharpnessDegPerFt: 0.3,
  breakpointFt: 43,
  breakpointBoard: 8,
  totalHookBoards: 12,
  entryAngleDeg: 5,
  pinsBoard: 17.5,
  flareIn: 4,
  ringClearanceIn: 0.75,
  turns: 11,
  speedAtPinsMph: 15,
  revRateAtPinsRpm: 340,
};

test.each(REACTION_IDS)('reader: %s is its own number, in the unit of its name', (id) =>
  expect(reader(id)(outcome)).toBeCloseTo(WANT[id], 11),
);

test.each(WISHES)('what is wished for by %s is the number that answers it, first in SI', (wish) => {
  const si = wishedNumber(wish, outcome);
  expect(wishedInUnit(wish, si)).toBe(reader(NUMBER_OF_WISH[wish])(outcome));
  expect(si).not.toBe(wishedInUnit(wish, si));
});
