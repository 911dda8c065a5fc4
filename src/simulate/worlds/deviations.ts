import type { PublishedNumbers } from '../../ball/core/published.js';
import type { BallUncertainty } from '../../records/schemas/ball-uncertainty.js';
import type { Bowler } from '../../records/schemas/bowler.js';
import { NOMINAL_SURFACE } from './assumed-surface.js';
import { guessedOf } from './draw-made.js';
import { drawsAt, drawsOf, type KnownScores } from './draws.js';
import { type DrilledBall, drawDrilledBall } from './drilled-ball.js';
import { drawLasting, type Lasting } from './lasting.js';
import { AS_PUBLISHED } from './made-ball.js';
import { drawShot, type ShotDeviations } from './release-scatter.js';

/**
 * One world: how a shot, a marked layout, a core and a lane differ from the nominal ones. SI. The release includes its scatter. Marking
 * errors are in rad, that of pin-to-PAP too, as the angle at the ball's centre.
 */
export interface Deviations extends Lasting, ShotDeviations, DrilledBall {
  /** Angle of the ball about its axis at release, rad; null for the mean over the whole turn. */
  readonly spinPhase: number | null;
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

/** A world with the layout marked exactly, on the most typical core, in a ball made as published; only guessed numbers still differ. */
export const luckOf = (deviations: Deviations, uncertainty: BallUncertainty = {}): Deviations => ({
  ...deviations,
  drillingAngle: 0,
  pinToPap: 0,
  valAngle: 0,
  body: 0,
  made: guessedOf(deviations.made, uncertainty),
});

/** What worlds are drawn for. */
export interface DeviationDraw {
  /** Any integer; the same seed gives the same worlds on every machine, however many are drawn. */
  readonly seed: number;
  readonly count: number;
  readonly bowler: Bowler;
  /** The ball's numbers, and the uncertainty of those that were guessed. */
  readonly published: PublishedNumbers;
  readonly uncertainty?: BallUncertainty;
  /** How many fitted cores there are to choose from. */
  readonly bodyCount: number;
  /** Whether lane and cover vary over their assumed ranges or stay nominal. */
  readonly surface?: 'assumed' | 'nominal';
  /** What logged shots taught about what lasts, if anything. */
  readonly known?: KnownScores | undefined;
}

/**
 * Draws the worlds that a whole ranking shares, so that layouts are compared under the same luck.
 *
 * They are evenly spread (`draws.ts`): the mean of a score over 64 of them is about as accurate as over 200 drawn at random. No bowler
 * repeats the angle of the ball about its axis at release (a foot of loft turns it by some 70°), so it is uniform over the whole turn.
 * Each number has a coordinate of its own, so that one that is certain does not change the draws of the others.
 */
export function drawDeviations({
  seed,
  count,
  bowler,
  published,
  uncertainty,
  bodyCount,
  surface = 'assumed',
  known,
}: DeviationDraw): readonly Deviations[] {
  return Array.from({ length: count }, (_, n) => {
    const draw = drawsOf(seed, n, known);
    const lasting = drawLasting(draw, bowler, published.radius);
    return {
      ...withShot(lasting, drawShot(draw, bowler)),
      ...drawDrilledBall(draw, published, bodyCount, uncertainty),
      spinPhase: draw.within('spinPhase', 0, 2 * Math.PI),
      surface: surface === 'nominal' ? NOMINAL_SURFACE : lasting.surface,
    };
  });
}

/** The middle of what is known of a bowler and a lane, the most typical core, marked exactly, the mean over spin phases. */
export const middleWorld = (
  { coordinates, mean }: KnownScores,
  bowler: Pick<Bowler, 'uncertainty'>,
  radius: number,
): Deviations => ({
  ...NO_DEVIATIONS,
  ...drawLasting(
    drawsAt((what) => mean[coordinates.indexOf(what)] ?? 0),
    bowler,
    radius,
  ),
});

/** What lasts, with the deviations of one shot added. */
export const withShot = <T extends Lasting>(lasting: T, shot: ShotDeviations): T & ShotDeviations => ({
  ...lasting,
  speed: lasting.speed + shot.speed,
  spin: lasting.spin + shot.spin,
  axisTilt: lasting.axisTilt + shot.axisTilt,
  axisRotation: lasting.axisRotation + shot.axisRotation,
  launchAngle: shot.launchAngle,
});
