import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { USUAL_READING_ERRORS } from '../records/shared/reading-errors.js';
import type { FittedLog } from './fit-log.js';
import { READ, READING_ERROR, type ReadId } from './readings.js';

/** What one more night would teach on which a reading is taken, besides the laydown and the board at the arrows. */
export interface NextReading {
  readonly reading: ReadId;
  /** Share by which the variance of the board at the pins, on a night still to come, would fall. */
  readonly surer: number;
}

/** Shots of the night that is thought of. */
const SHOTS = 10;

const AIMED: readonly ReadId[] = ['laydownBoard', 'arrowsBoard'];
const PINS = READ.indexOf('pinsBoard');

/**
 * Which reading would teach most on one more night like the last, most first: by how much the expected variance of what lasts falls in the
 * direction that moves the board at the pins. Where all is linear and normal that does not depend on what will be read (Chaloner &
 * Verdinelli, Statist. Sci. 10, 273, 1995; from memory).
 */
export function nextReadings({ unknowns, nights, fit }: FittedLog): readonly NextReading[] {
  const last = nights.length - 1;
  const { slopes, scattered } = fit.near.everyNight[last];
  const lasts = unknowns.flatMap((unknown, j) => ('night' in unknown ? [] : [j]));
  // of the night to come: what it has of its own, and its aim
  const own = unknowns.flatMap((unknown, j) => ('night' in unknown && unknown.night === last ? [j] : []));
  const known = fit.covariance.selection(lasts, lasts);
  const slopesOf = (at: number, places: readonly number[]): number[] =>
    places.map((j) => slopes[j]?.[at] ?? 0);
  const pins = Matrix.columnVector(
    lasts.map((j) => (unknowns[j].of === 'apart' ? 0 : (slopes[j]?.[PINS] ?? 0))), // where it goes, not how it is read
  );
  const before = pins.transpose().mmul(known).mmul(pins).get(0, 0);
  const after = (taken: readonly ReadId[]): number => {
    const at = taken.map((id) => READ.indexOf(id));
    const direct = new Matrix(at.map((place) => slopesOf(place, lasts)));
    const ofNight = new Matrix(at.map((place) => slopesOf(place, own)));
    const noise = new Matrix(
      at.map((a, i) =>
        at.map((b, j) => {
          const { ofShot, ofNight: alike } = READING_ERROR[READ[a]];
          const error = i === j ? USUAL_READING_ERRORS[ofShot] ** 2 / SHOTS + alike ** 2 : 0;
          return scattered.covariance[a][b] / SHOTS + error;
        }),
      ),
    );
    const total = direct
      .mmul(known)
      .mmul(direct.transpose())
      .add(ofNight.mmul(ofNight.transpose()))
      .add(noise);
    const toPins = direct.mmul(known).mmul(pins);
    const symmetric = total.add(total.transpose()).mul(0.5);
    return before - toPins.transpose().mmul(new CholeskyDecomposition(symmetric).solve(toPins)).get(0, 0);
  };
  return READ.filter((id) => !AIMED.includes(id))
    .map((reading) => ({ reading, surer: 1 - after([...AIMED, reading]) / before }))
    .sort((a, b) => b.surer - a.surer);
}
