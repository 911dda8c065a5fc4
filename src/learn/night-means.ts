import { medianAbsoluteDeviation, medianSorted } from 'simple-statistics';
import { isAgainstTarget, type LoggedShot, type Night } from '../records/schemas/shot-log.js';
import { type ReadingErrors, USUAL_READING_ERRORS } from '../records/shared/reading-errors.js';
import { READ, READING_ERROR, type ReadId } from './readings.js';

/** A reading of a night: its mean over shots, and the parts of its error. */
interface MeanReading {
  readonly id: ReadId;
  readonly mean: number;
  /** Number of shots for which it was read, weighted where wild readings count less. */
  readonly count: number;
  /** One standard deviation of the error: from shot to shot, and common to the whole night. */
  readonly ofShot: number;
  readonly ofNight: number;
}

export interface NightMeans {
  readonly readings: readonly MeanReading[];
  /** Number of shots for which both readings were taken, by their places in `readings`. */
  readonly together: readonly (readonly number[])[];
  /** Number of shots that fell into the gutter on the bowler's own side and lack a reading, by its place in `readings`. */
  readonly unread: readonly number[];
  /** Share of shots that fell into that gutter. */
  readonly gutterShare: number;
  /** Whether the board at the arrows was read off, without a target. */
  readonly isReadOff: boolean;
}

/** Readings farther from the night's median, in robust deviations, count less (Huber, Ann. Math. Statist. 35, 73, 1964). */
const HUBER = 2.5;

/** Median absolute deviations in a standard deviation of a normal number. */
const MAD_TO_DEVIATION = 1.4826;

/** Means of a night's readings. */
export function nightMeans(night: Night): NightMeans {
  const errors = { ...USUAL_READING_ERRORS, ...night.readingErrors } as ReadingErrors; // what is left out is no key
  const { shots } = night;
  const readOff = shots.filter((shot) => shot.arrowsBoard !== undefined && !isAgainstTarget(shot, night));
  const isReadOff = readOff.length > 0;
  const readings = READ.flatMap((id): MeanReading[] => {
    const values = shots.flatMap((shot) => shot[id] ?? []);
    const { ofShot, ofNight } = READING_ERROR[id];
    if (values.length === 0) {
      if (id !== 'arrowsBoard' || night.targetBoard === undefined) return [];
      // unread: the target, as near as the mean of a night comes to it
      return [{ id, mean: night.targetBoard, count: 1, ofShot: 0, ofNight: TARGET_HIT }];
    }
    const error = errors[ofShot];
    // what is read off without a target errs alike all night
    if (id === 'arrowsBoard' && isReadOff)
      return [{ id, ...weighedMean(values, error), ofShot: 0, ofNight: errors.arrowsReadOffBoards }];
    return [{ id, ...weighedMean(values, error), ofShot: error, ofNight }];
  });
  const isRead = (shot: LoggedShot, { id }: MeanReading): boolean => shot[id] !== undefined;
  return {
    readings,
    together: readings.map((a) =>
      readings.map((b) => shots.filter((shot) => isRead(shot, a) && isRead(shot, b)).length),
    ),
    unread: readings.map((each) => shots.filter((shot) => shot.gutter && !isRead(shot, each)).length),
    gutterShare: shots.filter(({ gutter }) => gutter).length / Math.max(1, shots.length), // of none, none
    isReadOff,
  };
}

/** How near the mean of a night comes to the target, one standard deviation, boards (assumed, no source). */
const TARGET_HIT = 1;

/** Huber's mean of some readings, in which wild ones count less. @param error  the least spread that is taken for granted */
export function weighedMean(values: readonly number[], error: number): { mean: number; count: number } {
  const middle = medianSorted([...values].sort((a, b) => a - b));
  const scale = Math.max(error, MAD_TO_DEVIATION * medianAbsoluteDeviation([...values]));
  let weights = 0;
  let sum = 0;
  for (const value of values) {
    const weight = Math.min(1, (HUBER * scale) / Math.abs(value - middle)); // by nothing: 1
    weights += weight;
    sum += weight * value;
  }
  return { mean: sum / weights, count: weights };
}
