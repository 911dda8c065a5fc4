import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { probit } from 'simple-statistics';
import { DEGREE, from, INCH, MPH, RPM } from '../base/units.js';
import type { Bowler, Scatter } from '../records/schemas/bowler.js';
import {
  type AssumedSurface,
  drawSurface,
  HIGH_SURFACE,
  LOW_SURFACE,
  NOMINAL_SURFACE,
} from './assumed-surface.js';
import { AS_PUBLISHED, drawMade, type Made } from './made-ball.js';

/** One way things may turn out: how a shot, a marked layout, a core and a lane differ from the nominal. SI. */
export interface Deviations {
  readonly speed: number;
  readonly spin: number;
  readonly axisTilt: number;
  readonly axisRotation: number;
  readonly launchAngle: number;
  /** How far round its axis the ball is turned at release, rad; null for the mean over the whole turn. */
  readonly spinPhase: number | null;
  /** How far the true PAP lies from the one the layout was marked from, over and up, rad. */
  readonly papOver: number;
  readonly papUp: number;
  /** Errors of marking the layout on the ball, rad (pin-to-PAP as an arc of the unit sphere). */
  readonly drillingAngle: number;
  readonly pinToPap: number;
  readonly valAngle: number;
  /** Which of the fitted cores the ball has. */
  readonly body: number;
  /** How the ball was made beside its published numbers. */
  readonly made: Made;
  /** Whether the drilled ball's centre of mass is put at its centre: never so, but it tells what the offset does. */
  readonly isBalanced: boolean;
  readonly surface: AssumedSurface;
}

/** Everything as stated, the most typical core, the middle of every assumed range, the mean over spin phases. */
export const NO_DEVIATIONS: Deviations = {
  speed: 0,
  spin: 0,
  axisTilt: 0,
  axisRotation: 0,
  launchAngle: 0,
  spinPhase: null,
  papOver: 0,
  papUp: 0,
  drillingAngle: 0,
  pinToPap: 0,
  valAngle: 0,
  body: 0,
  made: AS_PUBLISHED,
  isBalanced: false,
  surface: NOMINAL_SURFACE,
};

/** The nominal world with the centre of mass at the ball's centre. */
export const BALANCED_DEVIATIONS: Deviations = { ...NO_DEVIATIONS, isBalanced: true };

/** A world as it would have been with the layout marked exactly, on the most typical core, the ball made as published. */
export const luckOf = (deviations: Deviations): Deviations => ({
  ...deviations,
  drillingAngle: 0,
  pinToPap: 0,
  valAngle: 0,
  body: 0,
  made: AS_PUBLISHED,
});

/** Shot-to-shot scatter (one standard deviation) by skill, when a bowler gives none. Assumed, no source. */
export const SCATTER_BY_SKILL: Record<'beginner' | 'league' | 'advanced', Scatter> = {
  beginner: { speedMph: 0.8, revRateRpm: 25, axisTiltDeg: 3, axisRotationDeg: 8, launchAngleDeg: 0.6 },
  league: { speedMph: 0.4, revRateRpm: 15, axisTiltDeg: 2, axisRotationDeg: 5, launchAngleDeg: 0.35 },
  advanced: { speedMph: 0.2, revRateRpm: 8, axisTiltDeg: 1, axisRotationDeg: 3, launchAngleDeg: 0.2 },
};

export const scatterOf = (bowler: Bowler): Scatter =>
  bowler.scatter ?? SCATTER_BY_SKILL[bowler.skill ?? 'league'];

/** How far one shot may lie from the numbers given: from shot to shot, and since the numbers may be off themselves. */
function releaseDeviations(bowler: Bowler): Scatter {
  const scatter = scatterOf(bowler);
  const { speedMph = 0, revRateRpm = 0, axisTiltDeg = 0, axisRotationDeg = 0 } = bowler.uncertainty ?? {};
  return {
    speedMph: Math.hypot(scatter.speedMph, speedMph),
    revRateRpm: Math.hypot(scatter.revRateRpm, revRateRpm),
    axisTiltDeg: Math.hypot(scatter.axisTiltDeg, axisTiltDeg),
    axisRotationDeg: Math.hypot(scatter.axisRotationDeg, axisRotationDeg),
    launchAngleDeg: scatter.launchAngleDeg,
  };
}

/** How exactly a layout is marked by hand (one standard deviation): 1/16 in and 2°. Assumed, no source. */
export const MARKING_IN = 1 / 16;
export const MARKING_DEG = 2;

/** What worlds are drawn for. */
export interface DeviationDraw {
  /** Any integer; the same seed gives the same worlds on every machine. */
  readonly seed: number;
  readonly count: number;
  readonly bowler: Bowler;
  /** The ball's, m. */
  readonly radius: number;
  /** How many fitted cores there are to choose from. */
  readonly bodyCount: number;
  /** Whether lane and cover differ as far as is assumed, or stay as they are taken to be. */
  readonly surface?: 'assumed' | 'nominal';
}

/**
 * Draws worlds that the whole ranking shares, so that two layouts are compared under the same luck.
 *
 * No bowler repeats how far the ball is turned about its axis at release (a foot of loft turns it by some 70°), so all of the turn
 * is alike. What differs has a stream of random numbers of its own by kind: what is not uncertain, and lanes that are
 * fresh, keep their worlds.
 */
export function drawDeviations({
  seed,
  count,
  bowler,
  radius,
  bodyCount,
  surface = 'assumed',
}: DeviationDraw): readonly Deviations[] {
  const release = drawsOf(seed);
  const mark = drawsOf(seed ^ PAP_STREAM);
  const ball = drawsOf(seed ^ BALL_STREAM);
  const lane = drawsOf(seed ^ LANE_STREAM);
  const wear = drawsOf(seed ^ WEAR_STREAM);
  const scatter = releaseDeviations(bowler);
  const { papOverIn = 0, papUpIn = 0 } = bowler.uncertainty ?? {};
  return Array.from({ length: count }, () => ({
    speed: from(scatter.speedMph, MPH) * release.normal(),
    spin: from(scatter.revRateRpm, RPM) * release.normal(),
    axisTilt: from(scatter.axisTiltDeg, DEGREE) * release.normal(),
    axisRotation: from(scatter.axisRotationDeg, DEGREE) * release.normal(),
    launchAngle: from(scatter.launchAngleDeg, DEGREE) * release.normal(),
    spinPhase: release.within(0, 2 * Math.PI),
    papOver: (from(papOverIn, INCH) / radius) * mark.normal(),
    papUp: (from(papUpIn, INCH) / radius) * mark.normal(),
    drillingAngle: from(MARKING_DEG, DEGREE) * release.normal(),
    pinToPap: (from(MARKING_IN, INCH) / radius) * release.normal(),
    valAngle: from(MARKING_DEG, DEGREE) * release.normal(),
    body: Math.min(bodyCount - 1, Math.floor(ball.within(0, bodyCount))),
    made: drawMade(ball.within, radius),
    isBalanced: false,
    surface:
      surface === 'nominal'
        ? NOMINAL_SURFACE
        : {
            ...drawSurface(lane.normal, lane.within),
            burnPerGame: wear.within(LOW_SURFACE.burnPerGame, HIGH_SURFACE.burnPerGame),
            carriedDown: wear.within(LOW_SURFACE.carriedDown, HIGH_SURFACE.carriedDown),
          },
  }));
}

/** A stream of random numbers: standard normal ones, cut off where one in a thousand lies beyond, and even ones. */
function drawsOf(seed: number) {
  const generator = xoroshiro128plus(seed);
  for (let i = 0; i < 16; i++) generator.next(); // the first draws of near seeds resemble each other
  const uniform = (): number => uniformFloat64(generator);
  return {
    normal: (): number => probit(Math.min(0.999, Math.max(0.001, uniform()))),
    within: (low: number, high: number): number => low + (high - low) * uniform(),
  };
}

/** Any numbers but zero: they keep the streams of one seed apart. */
const WEAR_STREAM = 0x5eed;
const PAP_STREAM = 0x9a9;
const BALL_STREAM = 0xba11;
const LANE_STREAM = 0x1a9e;
