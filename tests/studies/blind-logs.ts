import { DEGREE, from, INCH, MPH, RPM } from '../../src/base/units.js';
import { stretched } from '../../src/learn/lane-of-night.js';
import { LANES_ALIKE } from '../../src/learn/lane-weight.js';
import { READ, READING_ERROR, type ReadId, readingsOf } from '../../src/learn/readings.js';
import { lastingShare, nightShare } from '../../src/learn/unknowns.js';
import { boardToX } from '../../src/motion/lane/boards.js';
import { aimAt } from '../../src/motion/reaction/aim.js';
import type { Launch } from '../../src/motion/shot/release.js';
import { type BallProblem, ballProblem } from '../../src/prepare/ball-problem.js';
import type { CoreFitter } from '../../src/prepare/fit-cores.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import type { Ball } from '../../src/records/schemas/ball.js';
import type { Bowler } from '../../src/records/schemas/bowler.js';
import type { Lane } from '../../src/records/schemas/lane.js';
import type { LoggedShot, Night } from '../../src/records/schemas/shot-log.js';
import { USUAL_READING_ERRORS } from '../../src/records/shared/reading-errors.js';
import type { LayoutNumbers } from '../../src/records/text/layout-text.js';
import { findLine } from '../../src/simulate/line.js';
import { POCKET_BOARD } from '../../src/simulate/pocket.js';
import { unaimedProblem } from '../../src/simulate/shot-problem.js';
import { type RolledShot, type Simulator, simulator } from '../../src/simulate/simulator.js';
import { NOMINAL_SURFACE } from '../../src/simulate/worlds/assumed-surface.js';
import { type Deviations, NO_DEVIATIONS, withShot } from '../../src/simulate/worlds/deviations.js';
import { drawsAt } from '../../src/simulate/worlds/draws.js';
import type { DrilledBall } from '../../src/simulate/worlds/drilled-ball.js';
import {
  drawLasting,
  LASTING,
  type Lasting,
  type LastingCoordinate,
} from '../../src/simulate/worlds/lasting.js';
import type { Learned } from '../../src/simulate/worlds/learned.js';
import { shotScatterOf } from '../../src/simulate/worlds/release-scatter.js';
import { type OtherLaw, underOtherLaw } from './other-law.js';
import type { Random } from './random.js';

/* Blind logs: of bowlers, lanes and balls that are otherwise than their records say, read with errors. Truth is always by physics. */

/** What is hidden of a bowler and a house, as each night has it. */
export type Hidden = (of: Random) => Lasting;

/** Where truth is otherwise than even a fit with everything unknown takes it to be. */
export interface Twist {
  /** Feet by which the pattern is longer than its record says. */
  readonly longerFt?: number;
  /** Added to each reading of a kind. */
  readonly bias?: Partial<Record<ReadId, number>>;
  /** Another law of friction between oil and dry boards. */
  readonly otherLaw?: OtherLaw;
}

/** A number spread evenly about 0, with that standard deviation. */
const even = (of: Random, deviation: number): number => deviation * Math.sqrt(3) * of.uniform(-1, 1);

/** Hides a bowler and a house by another generator than that of answers: even where that is normal, nominal where that is even. */
export function hide(of: Random): Hidden {
  const release = hideRelease(of);
  return hiddenBy(release, hideFriction(of));
}

/** The same on several lanes, which are as alike as lanes are taken to be. */
export function hideOnLanes(of: Random, lanes: number): readonly Hidden[] {
  const release = hideRelease(of);
  const [alike, own] = [Math.sqrt(LANES_ALIKE), Math.sqrt(1 - LANES_ALIKE)];
  const [oiled, dry, film, finish] = hideFriction(of);
  return Array.from({ length: lanes }, () => {
    const ofLane = hideFriction(of);
    const [o, d, f] = [oiled, dry, film].map((each, i) => alike * each + own * ofLane[i]);
    return hiddenBy(release, [o, d, f, finish]);
  });
}

const hideRelease = (of: Random): Omit<Lasting, 'surface'> => ({
  speed: from(even(of, 0.5), MPH),
  spin: from(even(of, 30), RPM),
  axisTilt: from(even(of, 3), DEGREE),
  axisRotation: from(even(of, 5), DEGREE),
  papOver: 0,
  papUp: 0,
});

/** Friction on oil and on dry boards, film scale, finish exponent. */
const hideFriction = (of: Random): readonly number[] =>
  [0.18, 0.11, 0.29, 0.36].map((deviation) => even(of, deviation));

const hiddenBy =
  (release: Omit<Lasting, 'surface'>, [oiled, dry, film, finish]: readonly number[]): Hidden =>
  (night) => ({
    ...release,
    surface: {
      ...NOMINAL_SURFACE,
      frictionOiledFactor: Math.exp(oiled + even(night, 0.055)),
      frictionDryFactor: Math.exp(dry + even(night, 0.033)),
      filmScale: NOMINAL_SURFACE.filmScale * Math.exp(film + even(night, 0.07)),
      finishExponent: NOMINAL_SURFACE.finishExponent * Math.exp(finish),
    },
  });

/** Hides them exactly as a fit takes them to be. @returns besides, what lasts in standard normal numbers */
export function hideAsAssumed(
  of: Random,
  uncertainty: Learned['uncertainty'],
  radius: number,
): { readonly hidden: Hidden; readonly lasting: Readonly<Record<LastingCoordinate, number>> } {
  const lasting = Object.fromEntries(LASTING.map((what) => [what, of.normal()])) as Record<
    LastingCoordinate,
    number
  >;
  const hidden: Hidden = (night) => {
    const scores = new Map<string, number>(
      LASTING.map((what) => [what, lastingShare(what) * lasting[what] + nightShare(what) * night.normal()]),
    );
    return drawLasting(
      drawsAt((what) => scores.get(what) ?? 0),
      { uncertainty },
      radius,
    );
  };
  return { hidden, lasting };
}

/** A drilled ball with its hidden core, making and marking. */
export interface HiddenBall {
  readonly record: Ball;
  readonly layout: LayoutNumbers;
  readonly problem: BallProblem;
  readonly off: DrilledBall;
}

export function hideBall(
  of: Random,
  record: Ball,
  bowler: Bowler,
  layout: LayoutNumbers,
  fitter?: CoreFitter,
): HiddenBall {
  const problem = ballProblem(record, bowler, 'moment', fitter);
  const { radius, differential, intermediateDifferential } = problem.published;
  const made = { lowRg: from(0.004, INCH) * of.uniform(-1, 1), more: 0.03 * of.uniform(-1, 1) };
  const off = {
    body: Math.floor(of.uniform() * problem.bodies.length),
    drillingAngle: from(2, DEGREE) * of.normal(),
    pinToPap: (from(1 / 16, INCH) / radius) * of.normal(),
    valAngle: from(2, DEGREE) * of.normal(),
    made: {
      lowRg: made.lowRg,
      differential: made.more * differential,
      intermediateDifferential: made.more * intermediateDifferential,
      topWeight: 0,
      pinToCg: 0,
    },
  };
  return { record, layout, problem, off };
}

/** A drilled ball on a lane, on some night. */
export interface TrueNight {
  readonly aim: Launch;
  /** A shot; aimed as the bowler does, or otherwise. */
  roll(of: Random, aim?: Launch): RolledShot;
  readonly read: Simulator['read'];
  readonly radius: number;
}

/** Nights of one ball: on each the lane is a little otherwise, and the bowler aims anew until the mean shot hits, as near as that goes. */
export function trueNights(
  hidden: Hidden,
  { record, layout: numbers, problem: ball, off }: HiddenBall,
  bowler: Bowler,
  lane: Lane,
  { longerFt = 0, otherLaw }: Twist,
): (of: Random) => TrueNight {
  const { radius } = ball.published;
  const layout = toLayout(numbers, radius);
  const longer = longerFt === 0 ? lane : stretched(lane, lane.patternFt + longerFt);
  const unaimed = unaimedProblem(otherLaw ? underOtherLaw(longer, otherLaw) : longer, bowler, record, ball);
  const scatter = shotScatterOf(bowler);
  const engine = simulator(unaimed);
  const usual = findLine(unaimed, layout).launch;
  return (of) => {
    const mean: Deviations = { ...NO_DEVIATIONS, ...off, ...hidden(of) };
    const rollAt = (angle: number) => engine.shot(layout, mean, { x: usual.x, angle }).shot;
    const { launch } = aimAt(boardToX(POCKET_BOARD), usual.x, unaimed.play.steepest, rollAt, usual.angle);
    const aim = { x: launch.x, angle: launch.angle + from(0.15, DEGREE) * of.normal() };
    const roll = (shots: Random, at = aim): RolledShot => {
      const shot = {
        speed: scatter.speed * shots.normal(),
        spin: scatter.spin * shots.normal(),
        axisTilt: scatter.axisTilt * shots.normal(),
        axisRotation: scatter.axisRotation * shots.normal(),
        launchAngle: scatter.launchAngle * shots.normal(),
      };
      const spinPhase = shots.uniform(0, 2 * Math.PI);
      return engine.shot(layout, { ...withShot(mean, shot), spinPhase }, at);
    };
    return { aim, roll, read: engine.read, radius };
  };
}

/**
 * A night's shots as a person reads them.
 *
 * @param night  whether all of a night's readings also err alike, as the fit takes them to
 */
export function readNight(
  of: Random,
  { roll, radius }: TrueNight,
  count: number,
  { bias = {} }: Twist,
  errsAlike = false,
): Night {
  const alike = READ.map((id) => {
    const { ofNight, always } = READING_ERROR[id];
    return (errsAlike ? Math.hypot(ofNight, always) * of.normal() : 0) + (bias[id] ?? 0);
  });
  const shots = Array.from({ length: count }, (): LoggedShot => {
    const rolled = roll(of);
    const readings = readingsOf(rolled, radius);
    const read = READ.map(
      (id, i) => readings[i] + alike[i] + USUAL_READING_ERRORS[READING_ERROR[id].ofShot] * of.normal(),
    );
    const arrived = rolled.shot.outcome === 'pins';
    const seen = READ.map((id, i) => [id, read[i]] as const).slice(0, arrived ? READ.length : 2);
    return { ...Object.fromEntries(seen), ...(arrived ? {} : { gutter: true as const }) };
  });
  return { lane: 'a lane', targetBoard: 10, shots }; // a target, so that the arrows are read against it
}
