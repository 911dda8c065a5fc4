import { Matrix } from 'ml-matrix';
import type { ShotDeviations } from '../simulate/worlds/release-scatter.js';
import type { ModelWithPrior, Observed } from './fit-with-prior.js';
import { fillGutters } from './gutter-shots.js';
import { laneWeight } from './lane-weight.js';
import type { LinearLog, LinearNight } from './linear-log.js';
import type { LoggedBall, LoggedNight } from './logged.js';
import type { NightMeans } from './night-means.js';
import type { NightModel, NightPoint } from './night-model.js';
import { READ, READING_ERROR } from './readings.js';
import { aboutTheMean, type ShotRead } from './scattered.js';
import { type LogUnknown, lastingShare, nightShare, OF_LANE } from './unknowns.js';

/** A night as it is fitted. */
export interface FittedNight {
  readonly model: NightModel;
  readonly means: NightMeans;
  readonly logged: LoggedBall;
  readonly night: LoggedNight;
  /** Which drilled ball. */
  readonly ball: number;
  /** Which lane; the one asked about is 0. */
  readonly lane: number;
  /** Places of the cores that are tried instead of the most typical one. */
  readonly cores: readonly number[];
}

/**
 * Steps of the central differences for each kind of unknown, in its standard deviations: as wide as the uncertainty that remains. With
 * narrower ones a reading that jumps, as flare does where one more ring is left, has far too steep a slope, and the rev rate seems to be
 * known far too well.
 */
const STEP = { lasting: 1, aim: 0.2, drilled: 1 } as const;

/** The means of nights as a function of all unknowns. */
export function logModel(
  nights: readonly FittedNight[],
  unknowns: readonly LogUnknown[],
): ModelWithPrior<LinearLog> {
  const rows = loggedRows(nights);
  const pointAt = (u: Float64Array, night: number): NightPoint => pointOf(unknowns, nights, u, night);
  const linear = unknowns.flatMap(({ of }, j) => (of === 'core' || of === 'apart' ? [j] : []));
  /** What other cores add, by linear interpolation between those tried, and the offset between readings and engine. */
  const addedTo = (u: Float64Array, slopeOf: (unknown: number) => number): number =>
    linear.reduce((sum, j) => sum + u[j] * slopeOf(j), 0);

  const linearNight = (u: Float64Array, night: number): LinearNight => {
    const { model, cores, lane } = nights[night];
    const here = pointAt(u, night);
    const { readings: middle, outcome } = read(model, here);
    const slopes = unknowns.map((unknown, j): Float64Array | null => {
      if (!isOf(unknown, night, nights[night]) || actsAsLasting(unknown)) return null;
      if (unknown.of === 'apart')
        return Float64Array.from(READ, (id) => (id === unknown.what ? READING_ERROR[id].always : 0));
      if (unknown.of === 'core') {
        const { readings } = read(model, { ...here, body: cores[unknown.core] });
        return readings.map((each, i) => (each - middle[i]) / Math.sqrt(cores.length));
      }
      const step = STEP[unknown.of] / onLane(lane, unknown); // as far on every lane
      const at = (side: number): Float64Array | null => {
        const there = read(model, pointAt(u.with(j, u[j] + side * step), night));
        // a shot with another outcome gives no slope
        return there.outcome === outcome ? there.readings : null;
      };
      const [less, more] = [at(-1), at(1)];
      if (less && more) return middle.map((_, i) => (more[i] - less[i]) / (2 * step));
      if (more) return middle.map((each, i) => (more[i] - each) / step);
      return less && middle.map((each, i) => (each - less[i]) / step);
    });
    for (const [j, unknown] of unknowns.entries()) {
      if (!isOf(unknown, night, nights[night]) || !actsAsLasting(unknown)) continue;
      const lasting = unknowns.findIndex((each) => each.of === 'lasting' && each.what === unknown.what);
      const share = weightOn(lane, unknown) / weightOn(lane, unknowns[lasting]);
      slopes[j] = slopes[lasting]?.map((each) => share * each) ?? null;
    }
    const scattered = aboutTheMean((shot) => read(model, here, shot), model.scatter);
    const means = middle.map(
      (each, at) => each + scattered.shift[at] + addedTo(u, (j) => slopes[j]?.[at] ?? 0),
    );
    return { means, slopes, scattered };
  };

  return {
    unknowns: unknowns.length,
    linearise(u) {
      const everyNight = nights.map((_, night) => linearNight(u, night));
      return {
        predicted: Float64Array.from(rows, ({ night, at }) => everyNight[night].means[at]),
        jacobian: rows.map(({ night, at }) =>
          Float64Array.from(everyNight[night].slopes, (slope) => slope?.[at] ?? 0),
        ),
        everyNight,
      };
    },
    predict(u, { everyNight }) {
      const here = nights.map(({ model }, night) => read(model, pointAt(u, night)).readings);
      return Float64Array.from(rows, ({ night, at }) => {
        const { scattered, slopes } = everyNight[night];
        return here[night][at] + scattered.shift[at] + addedTo(u, (j) => slopes[j]?.[at] ?? 0);
      });
    },
    observed: ({ everyNight }) => observedAt(nights, rows, everyNight),
  };
}

const read = (model: NightModel, point: NightPoint, shot?: ShotDeviations): ShotRead => {
  const rolled = model.roll(point, shot);
  return { readings: model.readingsOf(rolled), outcome: rolled.shot.outcome };
};

/** A night's inputs at some values of the unknowns, on the most typical core. */
export function pointOf(
  unknowns: readonly LogUnknown[],
  nights: readonly Pick<FittedNight, 'ball' | 'lane'>[],
  u: Float64Array,
  night: number,
): NightPoint {
  const scores = new Map<string, number>();
  const aim = { laydown: 0, direction: 0 };
  for (const [j, unknown] of unknowns.entries()) {
    if (!isOf(unknown, night, nights[night])) continue;
    if (unknown.of === 'aim') aim[unknown.what] = u[j];
    else if (unknown.of !== 'core' && unknown.of !== 'apart')
      scores.set(
        unknown.what,
        (scores.get(unknown.what) ?? 0) + weightOn(nights[night].lane, unknown) * u[j],
      );
  }
  return { scoreOf: (what) => scores.get(what) ?? 0, body: 0, ...aim };
}

/** Whether an unknown acts on a night. */
const isOf = (
  unknown: LogUnknown,
  night: number,
  { ball, lane }: Pick<FittedNight, 'ball' | 'lane'>,
): boolean => {
  switch (unknown.of) {
    case 'lasting':
    case 'apart':
      return true;
    case 'lane':
      return unknown.lane <= lane;
    case 'night':
    case 'aim':
      return unknown.night === night;
    default:
      return unknown.ball === ball;
  }
};

type AsLasting = Extract<LogUnknown, { readonly of: 'night' | 'lane' }>;

/** Whether an unknown is the part of a lasting number that belongs to a night or a lane: it then moves readings as that number does. */
const actsAsLasting = (unknown: LogUnknown): unknown is AsLasting =>
  unknown.of === 'night' || unknown.of === 'lane';

/** Weight of an unknown in its number on a lane, in standard deviations of the number. */
function weightOn(lane: number, unknown: LogUnknown): number {
  if (unknown.of === 'night') return nightShare(unknown.what);
  const isLasting = unknown.of === 'lasting' || unknown.of === 'lane';
  return (isLasting ? lastingShare(unknown.what) : 1) * onLane(lane, unknown);
}

/** Weight of an unknown, on a lane, in what lasts there. */
function onLane(lane: number, unknown: LogUnknown): number {
  if (unknown.of === 'lane') return laneWeight(lane, unknown.lane);
  return unknown.of === 'lasting' && OF_LANE.includes(unknown.what) ? laneWeight(lane, 0) : 1;
}

/** A reading of a night that was taken. */
export interface LoggedRow {
  readonly night: number;
  /** Its place in `READ`, and among the readings of the night. */
  readonly at: number;
  readonly place: number;
}

export const loggedRows = (nights: readonly Pick<FittedNight, 'means'>[]): readonly LoggedRow[] =>
  nights.flatMap(({ means }, night) =>
    means.readings.map(({ id }, place) => ({ night, at: READ.indexOf(id), place })),
  );

/** The readings and the covariance of their errors: the scatter of shots is common to all readings, reading errors are independent. */
function observedAt(
  nights: readonly FittedNight[],
  rows: readonly LoggedRow[],
  everyNight: readonly LinearNight[],
): Observed {
  const filled = nights.map(({ means }, night) => fillGutters(means, everyNight[night]));
  const noise = Matrix.zeros(rows.length, rows.length);
  for (const [i, a] of rows.entries())
    for (const [j, b] of rows.entries()) {
      if (a.night !== b.night) continue;
      const { readings, together } = nights[a.night].means;
      const [one, other] = [readings[a.place], readings[b.place]];
      const { covariance } = everyNight[a.night].scattered;
      const shared = Math.min(together[a.place][b.place], one.count, other.count);
      const scatter = (covariance[a.at][b.at] * shared) / (one.count * other.count);
      const own = i === j ? one.ofShot ** 2 / one.count + one.ofNight ** 2 : 0;
      noise.set(i, j, scatter + own);
    }
  return { values: Float64Array.from(rows, ({ night, place }) => filled[night][place]), noise };
}
