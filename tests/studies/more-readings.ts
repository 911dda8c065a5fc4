import { FOOT, from, INCH, MPH, to } from '../../src/base/units.js';
import { logModel } from '../../src/learn/log-model.js';
import { pinsVariance, type ThoughtOf } from '../../src/learn/next-reading.js';
import { READ, READING_ERROR, type ReadId } from '../../src/learn/readings.js';
import { asin } from '../../src/math/atan.js';
import { leastClearance } from '../../src/motion/reaction/rings.js';
import type { LeanShot } from '../../src/motion/shot/shot.js';
import type { BallProblem } from '../../src/prepare/ball-problem.js';
import type { CoreFitter } from '../../src/prepare/fit-cores.js';
import { USUAL_READING_ERRORS } from '../../src/records/shared/reading-errors.js';
import type { RolledShot } from '../../src/simulate/simulator.js';
import { blindCase } from './blind-case.js';

/*
 * What the speed on the display and a ring over a hole would teach, if they were learned from: how much narrower the prediction of the
 * board at the pins would be after one more night on which they are read besides boards.
 */

/** Displays are taken to show the mean speed over the end of the lane: common practice, no source. */
const DISPLAY_FT = [45, 59.5] as const;

const [SPEED, CLEARANCE] = [READ.length, READ.length + 1];

const board = (id: ReadId): ThoughtOf => ({
  at: READ.indexOf(id),
  ofShot: USUAL_READING_ERRORS[READING_ERROR[id].ofShot],
  ofNight: READING_ERROR[id].ofNight,
});
const BOARDS = (['laydownBoard', 'arrowsBoard', 'breakpointBoard', 'pinsBoard'] as const).map(board);

/** By how much the display of a house reads off on every shot, mph (assumed, no source); and if it were checked. */
const display = (ofNight: number): ThoughtOf => ({
  at: SPEED,
  ofShot: USUAL_READING_ERRORS.displaySpeedMph,
  ofNight,
});

/** More than any yes or no can say: how far the nearest ring runs from the nearest hole, as if it were measured, in. */
const RING: ThoughtOf = { at: CLEARANCE, ofShot: 1 / 8, ofNight: 1 / 8 };

/** What is read besides boards. */
export const MORE_READINGS: Readonly<Record<string, readonly ThoughtOf[]>> = {
  'the display, which a house may set 0.7 mph off': [display(0.7)],
  'a display that is right to 0.1 mph': [display(0.1)],
  'the ring nearest to a hole, measured to 1/8 in': [RING],
};

/**
 * The share by which the prediction after ten logged shots narrows with one more night of boards, and then with each of `MORE_READINGS`
 * besides. Null where most shots do not stay on the lane.
 */
export function narrowedBy(place: number, fitter?: CoreFitter): readonly number[] | null {
  const { truth, truthThere, logged, fitted } = blindCase(place, {}, fitter);
  const log = truth && truthThere && fitted([10]);
  if (!log) return null;
  const nights = log.nights.map((night) => {
    const readingsOf = (rolled: RolledShot): Float64Array =>
      Float64Array.of(
        ...night.model.readingsOf(rolled),
        displaySpeed(rolled.shot),
        ringClearanceIn(rolled.shot, logged.problem),
      );
    return { ...night, model: { ...night.model, readingsOf } };
  });
  const [night] = logModel(nights, log.unknowns).linearise(log.fit.mean).everyNight;
  const width = (taken: readonly ThoughtOf[]): number => Math.sqrt(pinsVariance(log, 0, night, taken));
  const withBoards = width(BOARDS);
  return [
    1 - withBoards / width([]),
    ...Object.values(MORE_READINGS).map((more) => 1 - width([...BOARDS, ...more]) / withBoards),
  ];
}

/** What a display shows, mph. */
function displaySpeed({ time, y }: LeanShot): number {
  const at = (distance: number): number => {
    const next = y.findIndex((each) => each >= distance);
    const i = next < 1 ? y.length - 1 : next;
    return time[i - 1] + ((distance - y[i - 1]) / (y[i] - y[i - 1])) * (time[i] - time[i - 1]);
  };
  const [first, last] = DISPLAY_FT.map((feet) => from(feet, FOOT));
  return to((last - first) / (at(last) - at(first)), MPH);
}

const ringClearanceIn = (shot: LeanShot, { holes, published: { radius } }: BallProblem): number =>
  Math.min(
    ...holes.map(({ mouth_B, open }) =>
      to(radius * leastClearance(shot, mouth_B, asin(open.radius / radius)), INCH),
    ),
  );
