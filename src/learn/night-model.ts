import { ARROWS_FT, BOARD } from '../base/constants.js';
import { DEGREE, FOOT, from } from '../base/units.js';
import { tan } from '../math/sin-cos.js';
import { boardToX } from '../motion/lane/boards.js';
import type { Launch } from '../motion/shot/release.js';
import type { BallProblem } from '../prepare/ball-problem.js';
import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import { toLayout } from '../prepare/to-layout.js';
import { ballUncertainty } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import { findLine } from '../simulate/line.js';
import { unaimedProblem } from '../simulate/shot-problem.js';
import { type RolledShot, type Simulator, simulator } from '../simulate/simulator.js';
import { NO_DEVIATIONS, withShot } from '../simulate/worlds/deviations.js';
import { type Drawn, drawsAt } from '../simulate/worlds/draws.js';
import { drawDrilledBall } from '../simulate/worlds/drilled-ball.js';
import { drawLasting, type Lasting } from '../simulate/worlds/lasting.js';
import { type ShotDeviations, STILL, shotScatterOf } from '../simulate/worlds/release-scatter.js';
import { laneOfNight, stretched } from './lane-of-night.js';
import type { LoggedBall, LoggedNight } from './logged.js';
import type { NightMeans } from './night-means.js';
import { throughBoards } from './read-aim.js';
import { readingsOf } from './readings.js';

/** The inputs of a night's shots. */
export interface NightPoint {
  /** Normal scores of what lasts, with the night's own part added, and of the drilled ball. */
  readonly scoreOf: (what: Drawn) => number;
  readonly body: number;
  /** How far the aim lies from where it seems to be, in units of `AIM_WITHIN`. */
  readonly laydown: number;
  readonly direction: number;
}

type Roll = (point: NightPoint, shot?: ShotDeviations) => RolledShot;

/** A night by physics. */
export interface NightModel {
  /** Rolls the mean shot, or one that deviates from it. */
  readonly roll: Roll;
  /** The same on a pattern that is longer by `ft`. */
  rollLonger(ft: number): Roll;
  /** The readings that a person would take of a shot, in the order of `READ`. */
  readingsOf(rolled: RolledShot): Float64Array;
  launchAt(point: NightPoint): Launch;
  /** One standard deviation of the bowler's shots. */
  readonly scatter: ShotDeviations;
}

/**
 * How far the aim may lie from where the readings put it, one standard deviation: so wide that the readings alone decide. The bowler
 * aims differently each night, and an error in a fixed aim would be mistaken for friction.
 */
const AIM_WITHIN = { laydown: 3 * BOARD, direction: from(1.5, DEGREE) };

/**
 * Prepares to roll a night's shots.
 *
 * @param bowler  with how far off the numbers may be
 */
export function nightModel(
  bowler: Bowler,
  { ball: record, layout: numbers }: LoggedBall,
  logged: LoggedNight,
  means: NightMeans,
  ball: BallProblem,
): NightModel {
  const { radius } = ball.published;
  const uncertainty = ballUncertainty(record);
  const lane = laneOfNight(logged);
  const problem = unaimedProblem(lane, bowler, record, ball);
  const layout = toLayout(numbers, radius);
  const read = (id: string): number | undefined => means.readings.find((each) => each.id === id)?.mean;
  const seeming = seemingAim(
    read('laydownBoard'),
    read('arrowsBoard'),
    () => findLine(problem, toLayout(MIDDLE_LAYOUT, radius)).launch,
  );
  let lasting: { readonly key: string; readonly value: Lasting } | undefined;
  const lastingAt = (scoreOf: NightPoint['scoreOf']): Lasting => {
    const draw = drawsAt(scoreOf);
    const value = drawLasting(draw, bowler, radius);
    // equal surfaces share one object, so that the worn oil is computed once
    const key = JSON.stringify(value.surface);
    if (lasting?.key === key) return { ...value, surface: lasting.value.surface };
    lasting = { key, value };
    return value;
  };
  const launchAt = ({ laydown, direction }: NightPoint): Launch => ({
    x: seeming.x + AIM_WITHIN.laydown * laydown,
    angle: seeming.angle + AIM_WITHIN.direction * direction,
  });
  const rollBy =
    (engine: Simulator) =>
    (point: NightPoint, shot = STILL): RolledShot => {
      const { scoreOf, body } = point;
      const drilled = drawDrilledBall(drawsAt(scoreOf), ball.published, 1, uncertainty);
      const mean = { ...NO_DEVIATIONS, ...drilled, body, ...lastingAt(scoreOf) };
      return engine.shot(layout, withShot(mean, shot), launchAt(point));
    };
  return {
    roll: rollBy(simulator(problem)),
    rollLonger: (ft) => {
      const longer = stretched(lane, lane.patternFt + ft);
      return rollBy(simulator(unaimedProblem(longer, bowler, record, ball)));
    },
    launchAt,
    readingsOf: (rolled) => readingsOf(rolled, radius),
    scatter: shotScatterOf(bowler),
  };
}

/** Where the bowler seems to aim: as read, or else as the usual line runs. */
function seemingAim(
  laydownBoard: number | undefined,
  arrows: number | undefined,
  usual: () => Launch,
): Launch {
  if (laydownBoard === undefined || arrows === undefined) {
    const line = usual();
    const distance = from(ARROWS_FT, FOOT);
    const arrowsX = arrows === undefined ? null : boardToX(arrows);
    if (laydownBoard !== undefined) return { x: boardToX(laydownBoard), angle: line.angle };
    return arrowsX === null ? line : { x: arrowsX - distance * tan(line.angle), angle: line.angle };
  }
  return throughBoards(laydownBoard, arrows);
}
