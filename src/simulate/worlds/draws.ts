import { scoreOfShare, shareBelow } from '../../math/normal.js';
import { MOST_COORDINATES, scrambledSobol } from '../../math/scrambled-sobol.js';

/**
 * The numbers that physics draws in a world, each with its coordinate of the Sobol points. The first coordinates are spread most evenly,
 * so the numbers that move a shot most come first.
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

/** Number of coordinates that physics uses, from the first on; the beliefs of practice use those that follow. */
export const DRAWN_COORDINATES = COORDINATES.length;

/**
 * The finish on dry boards, errors in reading the aim, the shape of the friction law, and how far the means of a release lie from the
 * numbers stated. They use the last coordinates, so that the beliefs keep theirs.
 */
const LAST = [
  'finishOnDry',
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

/** Stays at its middle unless a log is read: answers without a log assume one law of friction, and say so. */
const HELD: Drawn = 'lawShape';

/** Probability beyond which a normal number is cut off, on each side. */
const TAIL = 0.001;
const LEAST_SCORE = scoreOfShare(TAIL);

/** The numbers of one world. */
export interface Draws {
  /** A standard normal number, cut off on each side where one in a thousand lies beyond. */
  normal(what: Drawn): number;
  /** A uniform number between two bounds. */
  within(what: Drawn, low: number, high: number): number;
}

/**
 * What is known about some coordinates: a normal distribution of their normal scores, given by its mean and the Cholesky factor (lower
 * triangle) of its covariance. The prior has mean 0 and the unit matrix.
 */
export interface KnownScores {
  readonly coordinates: readonly Drawn[];
  readonly mean: readonly number[];
  readonly lower: readonly (readonly number[])[];
}

/**
 * Draws the numbers of the n-th world of a seed. Any first few worlds are spread as evenly as possible.
 *
 * @param known  the posterior of coordinates about which a log says more than the prior
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
