import { USUAL_GRIT } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import type { Drawn } from '../simulate/worlds/draws.js';
import { REFERENCE_GRIT } from '../simulate/worlds/friction-of.js';
import { LASTING, type LastingCoordinate } from '../simulate/worlds/lasting.js';
import type { Learned } from '../simulate/worlds/learned.js';
import type { LoggedBall } from './logged.js';
import { READ, type ReadId } from './readings.js';

/**
 * The part of each number that belongs to one night, as a share of its prior standard deviation: this comes to 5 % of friction on oil, 3 %
 * on dry boards, 7 % of the film scale. The rest lasts. Assumed, no source.
 */
const NIGHT_SHARE: Partial<Record<LastingCoordinate, number>> = {
  frictionOiled: 0.3,
  frictionDry: 0.3,
  filmScale: 0.25,
};

export const nightShare = (what: LastingCoordinate): number => NIGHT_SHARE[what] ?? 0;

/** The part of each number that lasts, as a share of its prior standard deviation. */
export const lastingShare = (what: LastingCoordinate): number => Math.sqrt(1 - nightShare(what) ** 2);

/** Lasting numbers that differ between lanes, since lanes have oil and boards of their own. */
export const OF_LANE: readonly LastingCoordinate[] = ['frictionOiled', 'frictionDry', 'filmScale'];

/** What belongs to one drilled ball: how it was marked and made. */
const DRILLED = [
  'drillingAngle',
  'pinToPap',
  'valAngle',
  'lowRg',
  'differential',
  'topWeight',
  'pinToCg',
] as const satisfies readonly Drawn[];

/** How many other cores are tried for each ball, to see what another core would do. */
export const CORES_TRIED = 8;

/** How a bowler aims on a night: a board at the foul line and a direction. */
const AIM = ['laydown', 'direction'] as const;

/** An unknown of the fit, standard normal in the prior. */
export type LogUnknown =
  /** A lasting number; one that differs between lanes, as it is on the lane asked about. */
  | { readonly of: 'lasting'; readonly what: LastingCoordinate }
  /** What another lane adds to it; other lanes count from 1. */
  | { readonly of: 'lane'; readonly lane: number; readonly what: LastingCoordinate }
  | { readonly of: 'night'; readonly night: number; readonly what: LastingCoordinate }
  | { readonly of: 'aim'; readonly night: number; readonly what: (typeof AIM)[number] }
  | { readonly of: 'drilled'; readonly ball: number; readonly what: (typeof DRILLED)[number] }
  | { readonly of: 'core'; readonly ball: number; readonly core: number }
  /** Offset between a person's readings and the engine, the same on every night. */
  | { readonly of: 'apart'; readonly what: ReadId };

/** Uncertainty of a bowler's numbers when a log is read and the record states none, one standard deviation. Assumed, no source. */
const RELEASE_OFF = { speedMph: 0.5, revRateRpm: 30, axisTiltDeg: 3, axisRotationDeg: 5 };

export const uncertaintyOf = ({ uncertainty }: Bowler): Learned['uncertainty'] => ({
  ...RELEASE_OFF,
  ...uncertainty,
});

const RELEASE = {
  speedMean: 'speedMph',
  spinMean: 'revRateRpm',
  axisTiltMean: 'axisTiltDeg',
  axisRotationMean: 'axisRotationDeg',
  papOver: 'papOverIn',
  papUp: 'papUpIn',
} as const satisfies Partial<Record<LastingCoordinate, keyof Learned['uncertainty']>>;

/** The lasting numbers that are uncertain and can affect these nights. */
export function lastingUnknowns(
  uncertainty: Learned['uncertainty'],
  balls: readonly LoggedBall[],
): readonly LastingCoordinate[] {
  const hasGames = balls.some(({ nights }) => nights.some(({ lane }) => (lane.games ?? 0) > 0));
  const hasFinish = balls.some(({ ball }) => (ball.surfaceGrit ?? USUAL_GRIT) !== REFERENCE_GRIT);
  return LASTING.filter((what) => {
    if (what in RELEASE) return (uncertainty[RELEASE[what as keyof typeof RELEASE]] ?? 0) > 0;
    if (what === 'burnPerGame' || what === 'carriedDown') return hasGames;
    return hasFinish || (what !== 'finishExponent' && what !== 'finishOnDry');
  });
}

/**
 * All unknowns of some balls and nights.
 *
 * @param lanes    how many lanes, including the one asked about
 * @param ballOf   the ball of each night
 * @param coresOf  how many other cores are tried for each ball
 */
export function unknownsOf(
  lasting: readonly LastingCoordinate[],
  lanes: number,
  ballOf: readonly number[],
  coresOf: readonly number[],
): readonly LogUnknown[] {
  const nights = [...ballOf.keys()];
  return [
    ...lasting.map((what): LogUnknown => ({ of: 'lasting', what })),
    ...READ.map((what): LogUnknown => ({ of: 'apart', what })),
    ...Array.from({ length: lanes - 1 }, (_, other) =>
      OF_LANE.map((what): LogUnknown => ({ of: 'lane', lane: other + 1, what })),
    ).flat(),
    ...nights.flatMap((night) => [
      ...AIM.map((what): LogUnknown => ({ of: 'aim', night, what })),
      ...lasting
        .filter((what) => nightShare(what) > 0)
        .map((what): LogUnknown => ({ of: 'night', night, what })),
    ]),
    ...coresOf.flatMap((cores, ball) => [
      ...DRILLED.map((what): LogUnknown => ({ of: 'drilled', ball, what })),
      ...Array.from({ length: cores }, (_, core): LogUnknown => ({ of: 'core', ball, core })),
    ]),
  ];
}
