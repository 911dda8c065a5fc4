import { mean, sampleVariance } from 'simple-statistics';
import { fromKeys } from '../base/from-keys.js';
import type { Layout } from '../layout/layout.js';
import { hypot } from '../math/hypot.js';
import { FORETOLD_IDS, type ForetoldId } from '../records/answers/learned-answer.js';
import { type Ball, ballUncertainty } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import { reader } from '../simulate/readings.js';
import type { ShotProblem } from '../simulate/shot-problem.js';
import { simulator } from '../simulate/simulator.js';
import { middleWorld, NO_DEVIATIONS, withShot } from '../simulate/worlds/deviations.js';
import { type Drawn, drawsAt, drawsOf, type KnownScores } from '../simulate/worlds/draws.js';
import { drawDrilledBall } from '../simulate/worlds/drilled-ball.js';
import { drawLasting } from '../simulate/worlds/lasting.js';
import { type ShotDeviations, shotScatterOf } from '../simulate/worlds/release-scatter.js';
import type { WorldAim } from './read-aim.js';
import { aboutTheMean, type ShotRead } from './scattered.js';

/** Error of the engine itself in the mean of a night, one standard deviation, in the unit of each number (assumed, no source). */
const ENGINE_OFF: Readonly<Record<ForetoldId, number>> = {
  pinsBoard: 0.5,
  breakpointBoard: 0.5,
  hookStartFt: 1,
  totalHookBoards: 0.5,
  entryAngleDeg: 0.2,
};

/**
 * Uncertainty of the shape of the friction law that remains for hook start, whatever was logged, in its standard deviations: no reading
 * shows where a hook starts, and laws that lead to the same boards start it feet apart on thick oil. Assumed, no source.
 */
const LAW_OFF = 1 / 3;

/** Predicted mean of a night's shots, and its standard deviation. */
export interface Foretold {
  readonly mean: number;
  readonly deviation: number;
}

/** The prior with which a log is read: the shape of the friction law is unknown too. */
export const NOTHING_LOGGED: KnownScores = { coordinates: ['lawShape'], mean: [0], lower: [[1]] };

const WORLDS = 64;

/**
 * Predicts the mean shot of a night to come, by physics in worlds drawn from what is known; null where the ball reaches the pins in
 * fewer than half of them.
 *
 * @param problem  its nominal world is the middle of what is known
 * @param bowler   with the uncertainty of the numbers, the unit of the scores
 * @param ball     its record, with the uncertainty of guessed numbers
 * @param aim      the launch in each world, which may be known from readings only
 */
export function predictNight(
  problem: ShotProblem,
  layout: Layout,
  known: KnownScores,
  { bowler, ball }: { readonly bowler: Bowler; readonly ball: Ball },
  aim: WorldAim,
  seed: number,
  worlds = WORLDS,
): Readonly<Record<ForetoldId, Foretold>> | null {
  const { published, bodies } = problem.ball;
  const engine = simulator(problem);
  const [nominal] = problem.worlds;
  const outcomes = Array.from({ length: worlds }, (_, n) => {
    const draw = drawsOf(seed, n, known);
    const drilled = drawDrilledBall(draw, published, bodies.length, ballUncertainty(ball));
    const deviations = { ...NO_DEVIATIONS, ...drilled, ...drawLasting(draw, bowler, published.radius) };
    return engine.outcome(layout, deviations, aim(draw));
  }).filter(({ shot }) => shot === 'pins');
  if (outcomes.length < worlds / 2) return null;
  const launch = aim(drawsAt((what) => known.mean[known.coordinates.indexOf(what)] ?? 0));
  const readShot = (shot: ShotDeviations): ShotRead => {
    const outcome = engine.outcome(layout, withShot(nominal, shot), launch);
    return { readings: Float64Array.from(FORETOLD_IDS, (id) => reader(id)(outcome)), outcome: outcome.shot };
  };
  const { shift } = aboutTheMean(readShot, shotScatterOf(bowler));
  const startAt = (lawShape: number): number | null => {
    const world = middleWorld(withMore(known, 'lawShape', lawShape), bowler, published.radius);
    const outcome = engine.outcome(layout, world, launch);
    return outcome.shot === 'pins' ? reader('hookStartFt')(outcome) : null;
  };
  const [sooner, later] = [startAt(LAW_OFF), startAt(-LAW_OFF)];
  const ofLaw = sooner === null || later === null ? 0 : (later - sooner) / 2;
  return fromKeys(FORETOLD_IDS, (id) => {
    const values = outcomes.map(reader(id));
    return {
      mean: mean(values) + shift[FORETOLD_IDS.indexOf(id)],
      deviation: hypot(Math.sqrt(sampleVariance(values)), ENGINE_OFF[id], id === 'hookStartFt' ? ofLaw : 0),
    };
  });
}

/** The same with one mean moved by `by` standard deviations. */
const withMore = (known: KnownScores, what: Drawn, by: number): KnownScores => ({
  ...known,
  mean: known.mean.map((mean, i) => (known.coordinates[i] === what ? mean + by : mean)),
});
