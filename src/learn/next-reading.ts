import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { USUAL_READING_ERRORS } from '../records/shared/reading-errors.js';
import type { FittedLog } from './fit-log.js';
import { symmetric } from './fit-with-prior.js';
import type { LinearNight } from './linear-log.js';
import { READ, READING_ERROR, type ReadId } from './readings.js';

/** What one more night would teach if a reading is taken in addition to the laydown and the board at the arrows. */
interface NextReading {
  readonly reading: ReadId;
  /** Share by which the variance of the board at the pins, on a night still to come, would fall. */
  readonly surer: number;
}

/** Shots of that night. */
const SHOTS = 10;

/** The place of the lane asked about. */
const ASKED = 0;

const AIMED: readonly ReadId[] = ['laydownBoard', 'arrowsBoard'];
const PINS = READ.indexOf('pinsBoard');

/**
 * Which reading would teach most on one more night like the last, the best first: how much the expected variance of what lasts falls in
 * the direction that moves the board at the pins. Empty where no night was on the lane asked about.
 */
export function nextReadings(log: FittedLog): readonly NextReading[] {
  const last = log.nights.findLastIndex(({ lane }) => lane === ASKED);
  if (last < 0) return [];
  const night = log.fit.near.everyNight[last];
  const after = (taken: readonly ReadId[]): number =>
    pinsVariance(
      log,
      last,
      night,
      taken.map((id) => {
        const { ofShot, ofNight } = READING_ERROR[id];
        return { at: READ.indexOf(id), ofShot: USUAL_READING_ERRORS[ofShot], ofNight };
      }),
    );
  const before = after([]);
  return READ.filter((id) => !AIMED.includes(id))
    .map((reading) => ({ reading, surer: 1 - after([...AIMED, reading]) / before }))
    .sort((a, b) => b.surer - a.surer);
}

/** A reading that might be taken: its place in `READ`, and one standard deviation of each part of its error. */
export interface ThoughtOf {
  readonly at: number;
  readonly ofShot: number;
  readonly ofNight: number;
}

/**
 * The expected variance of what lasts in the direction that moves the board at the pins, after one more night of ten shots with these
 * readings. In a linear, normal model it does not depend on the values read (Chaloner & Verdinelli, Statist. Sci. 10, 273,
 * 1995; from memory).
 *
 * @param last   the place of a night like it
 * @param night  that night, linearised
 */
export function pinsVariance(
  { unknowns, fit }: Pick<FittedLog, 'unknowns' | 'fit'>,
  last: number,
  { slopes, scattered }: Pick<LinearNight, 'slopes' | 'scattered'>,
  taken: readonly ThoughtOf[],
): number {
  const lasts = unknowns.flatMap((unknown, j) => ('night' in unknown ? [] : [j]));
  // what belongs to the night to come alone, and its aim
  const own = unknowns.flatMap((unknown, j) => ('night' in unknown && unknown.night === last ? [j] : []));
  const known = fit.covariance.selection(lasts, lasts);
  const slopesOf = (at: number, places: readonly number[]): number[] =>
    places.map((j) => slopes[j]?.[at] ?? 0);
  const pins = Matrix.columnVector(
    lasts.map((j) => (unknowns[j].of === 'apart' ? 0 : (slopes[j]?.[PINS] ?? 0))), // where it goes, not how it is read
  );
  const before = pins.transpose().mmul(known).mmul(pins).get(0, 0);
  if (taken.length === 0) return before;
  const direct = new Matrix(taken.map(({ at }) => slopesOf(at, lasts)));
  const ofNight = new Matrix(taken.map(({ at }) => slopesOf(at, own)));
  const noise = new Matrix(
    taken.map((a, i) =>
      taken.map((b, j) => {
        const error = i === j ? a.ofShot ** 2 / SHOTS + a.ofNight ** 2 : 0;
        return scattered.covariance[a.at][b.at] / SHOTS + error;
      }),
    ),
  );
  const total = symmetric(
    direct.mmul(known).mmul(direct.transpose()).add(ofNight.mmul(ofNight.transpose())).add(noise),
  );
  const toPins = direct.mmul(known).mmul(pins);
  return before - toPins.transpose().mmul(new CholeskyDecomposition(total).solve(toPins)).get(0, 0);
}
