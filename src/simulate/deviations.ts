import { DEGREE, from, INCH, MPH, RPM } from '../base/units.js';
import type { Bowler, Scatter } from '../records/schemas/bowler.js';
import { type AssumedSurface, drawSurface, NOMINAL_SURFACE } from './assumed-surface.js';
import { drawsOf } from './draws.js';
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
  surface: NOMINAL_SURFACE,
};

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
  /** Any integer; the same seed gives the same worlds on every machine, however many are drawn. */
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
 * They are evenly spread (`draws.ts`): the mean of a score over 64 of them is about as sure as over 200 drawn at random. No bowler
 * repeats how far the ball is turned about its axis at release (a foot of loft turns it by some 70°), so all of the turn is
 * alike. Each number has a coordinate of its own, so what is not uncertain does not change what the rest draw.
 */
export function drawDeviations({
  seed,
  count,
  bowler,
  radius,
  bodyCount,
  surface = 'assumed',
}: DeviationDraw): readonly Deviations[] {
  const scatter = releaseDeviations(bowler);
  const { papOverIn = 0, papUpIn = 0 } = bowler.uncertainty ?? {};
  return Array.from({ length: count }, (_, n) => {
    const draw = drawsOf(seed, n);
    return {
      speed: from(scatter.speedMph, MPH) * draw.normal('speed'),
      spin: from(scatter.revRateRpm, RPM) * draw.normal('spin'),
      axisTilt: from(scatter.axisTiltDeg, DEGREE) * draw.normal('axisTilt'),
      axisRotation: from(scatter.axisRotationDeg, DEGREE) * draw.normal('axisRotation'),
      launchAngle: from(scatter.launchAngleDeg, DEGREE) * draw.normal('launchAngle'),
      spinPhase: draw.within('spinPhase', 0, 2 * Math.PI),
      papOver: (from(papOverIn, INCH) / radius) * draw.normal('papOver'),
      papUp: (from(papUpIn, INCH) / radius) * draw.normal('papUp'),
      drillingAngle: from(MARKING_DEG, DEGREE) * draw.normal('drillingAngle'),
      pinToPap: (from(MARKING_IN, INCH) / radius) * draw.normal('pinToPap'),
      valAngle: from(MARKING_DEG, DEGREE) * draw.normal('valAngle'),
      body: Math.min(bodyCount - 1, Math.floor(draw.within('body', 0, bodyCount))),
      made: drawMade(draw, radius),
      surface: surface === 'nominal' ? NOMINAL_SURFACE : drawSurface(draw),
    };
  });
}
