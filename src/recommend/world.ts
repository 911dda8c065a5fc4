import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { probit } from 'simple-statistics';
import type { Bowler, Scatter } from '../records/bowler.js';
import { DEGREE, from, INCH, MPH, RPM } from '../units.js';
import { type AssumedRanges, NOMINAL_SURFACE } from './assumed-surface.js';

/** One way things may turn out: how a shot, a marked layout, a core and a lane differ from the nominal. SI. */
export interface World {
  readonly speed: number;
  readonly spin: number;
  readonly axisTilt: number;
  readonly axisRotation: number;
  readonly launchAngle: number;
  /** How far the true PAP lies from the one the layout was marked from, over and up, rad. */
  readonly papOver: number;
  readonly papUp: number;
  /** Errors of marking the layout on the ball, rad (pin-to-PAP as an arc of the unit sphere). */
  readonly drillingAngle: number;
  readonly pinToPap: number;
  readonly valAngle: number;
  /** Which of the fitted cores the ball has. */
  readonly body: number;
  readonly surface: AssumedRanges;
}

/** Everything as stated, the most typical core, the middle of every assumed range. */
export const NOMINAL_WORLD: World = {
  speed: 0,
  spin: 0,
  axisTilt: 0,
  axisRotation: 0,
  launchAngle: 0,
  papOver: 0,
  papUp: 0,
  drillingAngle: 0,
  pinToPap: 0,
  valAngle: 0,
  body: 0,
  surface: NOMINAL_SURFACE,
};

/** A world as it would have been with the layout marked exactly, on the most typical core. */
export const luckOf = (world: World): World => ({
  ...world,
  drillingAngle: 0,
  pinToPap: 0,
  valAngle: 0,
  body: 0,
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
const MARKING_IN = 1 / 16;
const MARKING_DEG = 2;

/**
 * Draws worlds that the whole ranking shares, so that two layouts are compared under the same luck.
 *
 * @param seed   any integer; the same seed gives the same worlds on every machine
 * @param radius the ball's, m
 */
export function drawWorlds(
  seed: number,
  count: number,
  bowler: Bowler,
  radius: number,
  bodyCount: number,
  range: { readonly low: AssumedRanges; readonly high: AssumedRanges },
): readonly World[] {
  const generator = xoroshiro128plus(seed);
  for (let i = 0; i < 16; i++) generator.next(); // the first draws of near seeds resemble each other
  const uniform = (): number => uniformFloat64(generator);
  const normal = (deviation: number, draw = uniform): number =>
    deviation * probit(Math.min(0.999, Math.max(0.001, draw())));
  const within = (low: number, high: number): number => low + (high - low) * uniform();
  // streams of their own: what is not uncertain, and lanes that are fresh, keep their worlds
  const wear = xoroshiro128plus(seed ^ WEAR_STREAM);
  const mark = xoroshiro128plus(seed ^ PAP_STREAM);
  const ofMark = (): number => uniformFloat64(mark);
  const wornWithin = (low: number, high: number): number => low + (high - low) * uniformFloat64(wear);
  const scatter = releaseDeviations(bowler);
  const { papOverIn = 0, papUpIn = 0 } = bowler.uncertainty ?? {};
  return Array.from({ length: count }, () => ({
    speed: normal(from(scatter.speedMph, MPH)),
    spin: normal(from(scatter.revRateRpm, RPM)),
    axisTilt: normal(from(scatter.axisTiltDeg, DEGREE)),
    axisRotation: normal(from(scatter.axisRotationDeg, DEGREE)),
    launchAngle: normal(from(scatter.launchAngleDeg, DEGREE)),
    papOver: normal(from(papOverIn, INCH) / radius, ofMark),
    papUp: normal(from(papUpIn, INCH) / radius, ofMark),
    drillingAngle: normal(from(MARKING_DEG, DEGREE)),
    pinToPap: normal(from(MARKING_IN, INCH) / radius),
    valAngle: normal(from(MARKING_DEG, DEGREE)),
    body: Math.min(bodyCount - 1, Math.floor(uniform() * bodyCount)),
    surface: {
      frictionDryFactor: within(range.low.frictionDryFactor, range.high.frictionDryFactor),
      filmScale: within(range.low.filmScale, range.high.filmScale),
      bandWidth: within(range.low.bandWidth, range.high.bandWidth),
      carriedShare: within(range.low.carriedShare, range.high.carriedShare),
      burnPerGame: wornWithin(range.low.burnPerGame, range.high.burnPerGame),
      carriedDown: wornWithin(range.low.carriedDown, range.high.carriedDown),
    },
  }));
}

/** Any numbers but zero: they keep the streams of one seed apart. */
const WEAR_STREAM = 0x5eed;
const PAP_STREAM = 0x9a9;
