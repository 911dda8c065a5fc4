import { errorFunction, probit } from 'simple-statistics';
import { MOST_COORDINATES, scrambledSobol } from '../../math/scrambled-sobol.js';

/**
 * All that physics draws in a world, each a coordinate of evenly spread points. The first coordinates are spread best, so what moves a
 * shot most stands first.
 */
const COORDINATES = [
  'launchAngle',
  'axisRotation',
  'frictionOiled',
  'speed',
  'spinPhase',
  'papOver',
  'papUp',
  'frictionDry',
  'filmScale',
  'spin',
  'axisTilt',
  'wornPerPass',
  'body',
  'pinToPap',
  'drillingAngle',
  'valAngle',
  'carriedShare',
  'topWeight',
  'burnPerGame',
  'pinToCg',
  'bandWidth',
  'lowRg',
  'differential',
  'finishExponent',
  'carriedDown',
] as const;

/** Coordinates that physics takes from the first on; those that follow are free for what is added to it. */
export const DRAWN_COORDINATES = COORDINATES.length;

/** How far the means of a release lie from what is stated: the last coordinates, so that what is added to physics keeps its own. */
const MEANS = ['speedMean', 'spinMean', 'axisTiltMean', 'axisRotationMean'] as const;

export type Drawn = (typeof COORDINATES)[number] | (typeof MEANS)[number];

const PLACES: ReadonlyMap<Drawn, number> = new Map<Drawn, number>([
  ...COORDINATES.map((what, i): [Drawn, number] => [what, i]),
  ...MEANS.map((what, i): [Drawn, number] => [what, MOST_COORDINATES - MEANS.length + i]),
]);

/** Where a normal number is cut off: one in a thousand lies beyond. */
const TAIL = 0.001;

/** The numbers of one world. */
export interface Draws {
  /** A standard normal number, cut off where one in a thousand lies beyond. */
  normal(what: Drawn): number;
  /** A number between two, all alike. */
  within(what: Drawn, low: number, high: number): number;
}

/**
 * What is known of some coordinates, as a normal distribution of their normal scores: mean, and a lower triangle whose product with its
 * transpose is the covariance. Means of 0 and the unit triangle are what is known beforehand.
 */
export interface KnownScores {
  readonly coordinates: readonly Drawn[];
  readonly mean: readonly number[];
  readonly lower: readonly (readonly number[])[];
}

/**
 * Draws the numbers of the n-th world of a seed; the first few worlds are spread as evenly as many.
 *
 * @param known  of some coordinates more than is known beforehand
 */
export function drawsOf(seed: number, n: number, known?: KnownScores): Draws {
  const at = (what: Drawn): number => scrambledSobol(n, PLACES.get(what)!, seed);
  const normal = (what: Drawn): number => probit(Math.min(1 - TAIL, Math.max(TAIL, at(what))));
  const plain: Draws = { normal, within: (what, low, high) => low + (high - low) * at(what) };
  if (!known) return plain;
  const independent = known.coordinates.map(normal);
  const scores = new Map(
    known.coordinates.map((what, i) => [
      what,
      known.lower[i].reduce((sum, each, j) => sum + each * independent[j], known.mean[i]),
    ]),
  );
  const moved = drawsAt((what) => scores.get(what) ?? 0);
  const isKnown = (what: Drawn): boolean => scores.has(what);
  return {
    normal: (what) => (isKnown(what) ? moved : plain).normal(what),
    within: (what, low, high) => (isKnown(what) ? moved : plain).within(what, low, high),
  };
}

/** The numbers at given normal scores: 0 is the middle of everything. */
export const drawsAt = (scoreOf: (what: Drawn) => number): Draws => ({
  normal: (what) => Math.min(-probit(TAIL), Math.max(probit(TAIL), scoreOf(what))),
  within: (what, low, high) => low + (high - low) * shareBelow(scoreOf(what)),
});

/** The chance that a standard normal number is less; errs by 1e-7 at most, as the library states. */
export const shareBelow = (score: number): number => (1 + errorFunction(score / Math.SQRT2)) / 2;
