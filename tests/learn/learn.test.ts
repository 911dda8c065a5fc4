import { compiled, ndtr } from 'cephes';
import { mean } from 'simple-statistics';
import { beforeAll, describe, expect, test } from 'vitest';
import { fitLog } from '../../src/learn/fit-log.js';
import { learn } from '../../src/learn/learn.js';
import { logModel, pointOf } from '../../src/learn/log-model.js';
import { misfitOf } from '../../src/learn/misfit.js';
import { nextReadings } from '../../src/learn/next-reading.js';
import { predictNight } from '../../src/learn/predict-night.js';
import { exactly } from '../../src/learn/read-aim.js';
import { READ } from '../../src/learn/readings.js';
import { uncertaintyOf } from '../../src/learn/unknowns.js';
import { lastingOf } from '../../src/learn/what-is-known.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import { unaimedProblem } from '../../src/simulate/shot-problem.js';
import { NOMINAL_SURFACE } from '../../src/simulate/worlds/assumed-surface.js';
import type { Hidden } from '../studies/blind-logs.js';
import { averageBowler, houseLane } from '../support/problems.js';
import { refusalOf } from '../support/refusal-of.js';
import { NOTHING_KNOWN } from '../support/without-log.js';
import { LOGGED_LAYOUT, loggedBall } from './learned-log.js';

beforeAll(() => compiled);

const ball = loggedBall([10, 10]);
const log = fitLog(averageBowler, [ball], {})!;

/** All as stated, but the oil grips so many times as much. */
const oil = (factor: number) => (): Hidden => () => ({
  speed: 0,
  spin: 0,
  axisTilt: 0,
  axisRotation: 0,
  papOver: 0,
  papUp: 0,
  surface: { ...NOMINAL_SURFACE, frictionOiledFactor: factor },
});

test('fitLog: a logged ball that cannot be is named, since it need not be the one asked about', () => {
  const impossible = { ...ball, ball: { ...ball.ball, name: 'Old', rgIn: 2.78 } };
  const { worded } = refusalOf(() => fitLog(averageBowler, [ball, impossible], {}));
  expect(worded.faults[0].field).toBe('logged["Old"].rgIn');
});

describe('logModel', () => {
  test('slopes are those of small steps to both sides, where readings are smooth', () => {
    const model = logModel(log.nights, log.unknowns);
    const u = new Float64Array(log.unknowns.length);
    const near = model.linearise(u);
    const isSmooth = ({ at }: (typeof log.rows)[number]): boolean =>
      ['laydownBoard', 'arrowsBoard', 'breakpointBoard', 'boardAt50Ft', 'pinsBoard'].includes(READ[at]);
    const places = log.unknowns.flatMap((unknown, j) =>
      (unknown.of === 'lasting' &&
        ['frictionOiled', 'frictionDry', 'spinMean', 'speedMean'].includes(unknown.what)) ||
      unknown.of === 'aim'
        ? [j]
        : [],
    );
    expect(places.length).toBeGreaterThan(6);
    for (const j of places) {
      const at = (step: number) =>
        model.predict(
          u.map((each, k) => (k === j ? each + step : each)),
          near,
        );
      const [less, more] = [at(-0.02), at(0.02)];
      for (const [i, row] of log.rows.entries()) {
        if (!isSmooth(row)) continue;
        const slope = (more[i] - less[i]) / 0.04;
        // the model steps a deviation to either side, over which paths bend
        expect(Math.abs(near.jacobian[i][j] - slope)).toBeLessThan(0.2 + 0.2 * Math.abs(slope));
      }
    }
  });

  test('a night has no slope by what belongs to another', () => {
    const [first] = log.rows.flatMap(({ night }, i) => (night === 0 ? [i] : []));
    for (const [j, unknown] of log.unknowns.entries())
      if ('night' in unknown && unknown.night === 1) expect(log.fit.near.jacobian[first][j]).toBe(0);
  });
});

describe('learn', () => {
  test.each([0.7, 1.4])('oil that grips %d times as much is found to grip more, or less', (factor) => {
    const found = [5, 6, 7].map((seed) => {
      const { unknowns, fit } = fitLog(
        averageBowler,
        [loggedBall([10, 10, 10], { seed, hiddenBy: oil(factor) })],
        {},
      )!;
      const { j } = lastingOf(unknowns).find(({ what }) => what === 'frictionOiled')!;
      expect(fit.covariance.get(j, j)).toBeLessThan(0.9); // one beforehand; the shape of the law takes a share of what is learned
      return fit.mean[j];
    });
    // the truth lies two deviations off; most of that other numbers, and what readings and engine lie apart, could be as well
    expect((mean(found) * Math.log(factor)) / Math.abs(Math.log(factor))).toBeGreaterThan(0.15);
  });

  test('where the oil is far otherwise, what is foretold of a night like the last comes nearer, and surer', () => {
    const logged = loggedBall([10, 10, 10], { hiddenBy: oil(1.6) });
    const { log: found, learned } = learn(averageBowler, [logged])!;
    const { fit, nights, ready, unknowns } = found;
    const unsure = { ...averageBowler, uncertainty: uncertaintyOf(averageBowler) };
    const launch = nights[2].model.launchAt(pointOf(unknowns, nights, fit.mean, 2));
    const predict = (known: typeof NOTHING_KNOWN) =>
      predictNight(
        unaimedProblem(houseLane, unsure, logged.ball, ready[0], { ...learned, ...known }),
        toLayout(LOGGED_LAYOUT, ready[0].published.radius),
        known,
        { bowler: unsure, ball: logged.ball },
        exactly(launch),
        1,
      )!.pinsBoard;
    const [before, after] = [predict(NOTHING_KNOWN), predict(learned)];
    const read =
      fit.observed.values[found.rows.findIndex(({ night, at }) => night === 2 && READ[at] === 'pinsBoard')];
    expect(Math.abs(after.mean - read)).toBeLessThan(0.5 * Math.abs(before.mean - read));
    expect(after.deviation).toBeLessThan(0.7 * before.deviation);
  });

  test('a left-hander’s log teaches the same as its mirror image', () => {
    const left = { ...averageBowler, hand: 'left' as const };
    const mirrored = {
      ...houseLane,
      zones: houseLane.zones.map((zone) => ({
        ...zone,
        fromBoard: 39 - zone.toBoard,
        toBoard: 39 - zone.fromBoard,
      })),
    };
    const onOtherHand = { ...ball, nights: ball.nights.map(({ night }) => ({ night, lane: mirrored })) };
    const other = fitLog(left, [onOtherHand], {})!;
    for (const [j, mean] of log.fit.mean.entries()) expect(other.fit.mean[j]).toBeCloseTo(mean, 6);
  });

  test('the same log teaches the same, to the last bit', () => {
    expect(fitLog(averageBowler, [ball], {})!.fit.mean).toEqual(log.fit.mean);
  });

  test('a log without a night, or whose shots nearly all fell into the gutter, teaches nothing', () => {
    expect(learn(averageBowler, [{ ...ball, nights: [] }])).toBeNull();
    const gutters = { lane: 'house', shots: [{ gutter: true as const, arrowsBoard: 3 }] };
    expect(learn(averageBowler, [{ ...ball, nights: [{ night: gutters, lane: houseLane }] }])).toBeNull();
  });
});

describe('nights on another lane', () => {
  const other = { ...houseLane, name: 'another hall' };
  const [first, second] = ball.nights;
  const onLanes = { ...ball, nights: [first, { ...second, lane: other }] };
  const leftOf = (logged: typeof ball, what: string, lane = houseLane): number => {
    const { unknowns, fit } = fitLog(averageBowler, [logged], { lane })!;
    const { j } = lastingOf(unknowns).find((each) => each.what === what)!;
    return fit.covariance.get(j, j);
  };
  const alone = { ...ball, nights: [first] };

  test.each([
    ['speedMean', 'about as much so as if they were here', 1.02],
    ['frictionOiled', 'less so than if they were here', 1],
  ] as const)('%s is known better with them, %s', (what, _, most) => {
    const [without, elsewhere, here] = [alone, onLanes, ball].map((logged) => leftOf(logged, what));
    expect(elsewhere).toBeLessThan(without);
    expect(here).toBeLessThan(most * elsewhere);
  });

  test('alone they say as much of the release as they would here, and less of the oil', () => {
    const there = { ...ball, nights: [{ ...first, lane: other }] };
    expect(leftOf(there, 'speedMean')).toBeLessThan(1);
    expect(leftOf(there, 'frictionOiled')).toBeGreaterThan(leftOf(alone, 'frictionOiled'));
    expect(leftOf(there, 'frictionOiled')).toBeLessThan(1);
    expect(nextReadings(fitLog(averageBowler, [there], { lane: houseLane })!)).toEqual([]);
  });

  test('which lane is asked about does not change how well the log fits', () => {
    const [here, there] = [houseLane, other].map((lane) =>
      misfitOf(fitLog(averageBowler, [onLanes], { lane })!),
    );
    expect(there.chiSquare / here.chiSquare).toBeCloseTo(1, 1); // slopes are taken at other points
    const patterns = ({ causes }: typeof here) => causes.flatMap(({ lane }) => lane ?? []).sort();
    expect(patterns(here)).toEqual([other.name, houseLane.name].sort());
  });

  test('where none is asked about, it is that of the latest night', () => {
    const dated = onLanes.nights.map(({ night, lane }, i) => ({
      night: { ...night, on: `2026-03-0${2 - i}` },
      lane,
    }));
    expect(fitLog(averageBowler, [{ ...onLanes, nights: dated }], {})!.lane).toBe(houseLane);
    expect(fitLog(averageBowler, [onLanes], {})!.lane).toBe(other);
  });
});

describe('misfitOf', () => {
  test('a log that is as it is taken to be is not doubted', () => {
    expect(misfitOf(log).isDoubtful).toBe(false);
  });

  test.each([
    ['pinsBoard', 8],
    ['arrowsBoard', -5],
  ] as const)('%s read %d too high is doubted, and named with about its size', (reading, by) => {
    const { isDoubtful, causes } = misfitOf(
      fitLog(averageBowler, [loggedBall([10, 10, 10], { twist: { bias: { [reading]: by } } })], {})!,
    );
    expect(isDoubtful).toBe(true);
    const cause = causes.find((each) => each.reading === reading)!;
    // so far off, the model is no longer linear
    expect(Math.abs(cause.by / by - 1)).toBeLessThan(1 / 3);
    expect(causes.slice(0, 3)).toContain(cause);
  });

  test('a log doubted by one cause alone is as unlikely as that cause, not as its means are together', () => {
    const { isDoubtful, chance, luck, causes } = misfitOf(
      fitLog(averageBowler, [loggedBall([10, 10, 10], { twist: { bias: { arrowsBoard: 2 } } })], {})!,
    );
    expect(isDoubtful).toBe(true);
    expect(chance).toBeGreaterThan(0.02);
    const [{ by, deviation }] = causes;
    const ofCause = 2 * ndtr(-Math.abs(by) / deviation); // two-sided
    expect(Math.abs(luck - 2 * causes.length * ofCause)).toBeLessThan(1e-5); // Bonferroni: two tests, several causes
  });

  test('chances are chances, the least likely surprise first', () => {
    const { chance, luck, surprises } = misfitOf(log);
    for (const each of [chance, luck, ...surprises.map((surprise) => surprise.chance)]) {
      expect(each).toBeGreaterThanOrEqual(0);
      expect(each).toBeLessThanOrEqual(1);
    }
    expect(surprises.map((each) => each.chance)).toEqual(
      surprises.map((each) => each.chance).sort((a, b) => a - b),
    );
  });
});

test('nextReadings: each makes the board at the pins surer, a little, most first; laydown and arrows are not on the list', () => {
  const next = nextReadings(log);
  expect(next.map(({ reading }) => reading).sort()).toEqual(
    ['boardAt50Ft', 'breakpointBoard', 'breakpointFt', 'flareIn', 'pinsBoard'].sort(),
  );
  for (const { surer } of next) {
    expect(surer).toBeGreaterThan(0);
    expect(surer).toBeLessThan(1);
  }
  expect(next[0].surer).toBeGreaterThan(next[4].surer);
});
