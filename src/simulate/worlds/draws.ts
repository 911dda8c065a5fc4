import { scoreOfShare, shareBelow } from '../../math/normal.js';
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

/**
 * How far off a bowler reads the aim, the shape of the friction law, and how far the means of a release lie from what is stated: the last
 * coordinates, so that what is added to physics keeps its own.
 */
const LAST = [
  'laydownRead',
  'arrowsRead',
  'lawShape',
  'speedMean',
  'spinMean',
  'axisTiltMean',
  'axisRotationMean',
] as const;

export type Drawn = (typeof COORDINATES)[number] | (typeof LAST)[number];

const PLACES: ReadonlyMap<Drawn, number> = new Map<Drawn, number>([
  ...COORDINATES.map((what, i): [Drawn, number] => [what, i]),
  ...LAST.map((what, i): [Drawn, number] => [what, MOST_COORDINATES - LAST.length + i]),
]);

/** Stays in its middle until a log is read: answers without one take one law of friction for granted, and say so. */
const HELD: Drawn = 'lawShape';

/** Where a normal number is cut off: one in a thousand lies beyond. */
const TAIL = 0.001;
const LEAST_SCORE = scoreOfShare(TAIL);

/** The numbers of one world. */
export interface Draws {
  /** A standard normal number, cut off where one in a thousand lies beyond. */
  normal(what: Drawn): number;
  /** A number between two, all alike. */
  within(what: Drawn, low: number, high: number): number;
}

/**
 * What is known of some coordinates, as a normal distribution of their normal scores: mean, and a lower triangle whose product with its
 * transpose is the covariance. Means of 0 and the unit triangle are the prior.
 */
export interface KnownScores {
  readonly coordinates: readonly Drawn[];
  readonly mean: readonly number[];
  readonly lower: readonly (readonly number[])[];
}

/**
 * Draws the numbers of the n-th world of a seed; the first few worlds are spread as evenly as many.
 *
 * @param known  the posterior of coordinates about which more is known than the prior
 */
export function drawsOf(seed: number, n: number, known?: KnownScores): Draws {
  const at = (what: Drawn): number => scrambledSobol(n, PLACES.get(what)!, seed);
  const score = (what: Drawn): number => scoreOfShare(Math.min(1 - TAIL, Math.max(TAIL, at(what))));
  const normal = (what: Drawn): number => (what === HELD ? 0 : score(what));
  const plain: Draws = { normal, within: (what, low, high) => low + (high - low) * at(what) };
  if (!known) return plain;
  const independent = known.coordinates.map(score);
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
  normal: (what) => Math.min(-LEAST_SCORE, Math.max(LEAST_SCORE, scoreOf(what))),
  within: (what, low, high) => low + (high - low) * shareBelow(scoreOf(what)),
});
