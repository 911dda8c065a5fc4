import { probit } from 'simple-statistics';
import { scrambledSobol } from '../math/scrambled-sobol.js';

/**
 * All that is drawn in a world, each a coordinate of evenly spread points. The first coordinates are spread best, so what moves a shot
 * most stands first.
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

/** Coordinates that physics takes; those that follow are free for what is added to it. */
export const DRAWN_COORDINATES = COORDINATES.length;

export type Drawn = (typeof COORDINATES)[number];

/** Where a normal number is cut off: one in a thousand lies beyond. */
const TAIL = 0.001;

/** The numbers of one world. */
export interface Draws {
  /** A standard normal number, cut off where one in a thousand lies beyond. */
  normal(what: Drawn): number;
  /** A number between two, all alike. */
  within(what: Drawn, low: number, high: number): number;
}

/** Draws the numbers of the n-th world of a seed; the first few worlds are spread as evenly as many. */
export function drawsOf(seed: number, n: number): Draws {
  const at = (what: Drawn): number => scrambledSobol(n, COORDINATES.indexOf(what), seed);
  return {
    normal: (what) => probit(Math.min(1 - TAIL, Math.max(TAIL, at(what)))),
    within: (what, low, high) => low + (high - low) * at(what),
  };
}
