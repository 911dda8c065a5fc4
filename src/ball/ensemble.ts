import type { BallBody } from './ball-body.js';
import { SHAPE_DIMENSIONS, startingShape } from './core-families.js';
import type { PublishedNumbers } from './published.js';
import { type Misfit, solveCore } from './solve-core.js';

/** Differing cores that all have a ball's published numbers. */
export interface Ensemble {
  readonly bodies: readonly BallBody[];
  /** Starting shapes tried, and how many failed for each reason. */
  readonly tried: number;
  readonly misfits: Readonly<Partial<Record<Misfit, number>>>;
}

/** Starting shapes tried before giving up. */
const MOST_TRIES = 3000;

/**
 * Finds cores of the ball's family that all have its published numbers.
 *
 * Starting shapes come from an additive-recurrence sequence (the generalised golden ratio; Roberts, 2018,
 * from memory): evenly spread, without a seed, the same on every machine. Fewer bodies than asked for, or
 * none, means that such a core is rare or impossible; `misfits` says why.
 */
export function fitEnsemble(published: PublishedNumbers, count: number, mostTries = MOST_TRIES): Ensemble {
  const bodies: BallBody[] = [];
  const misfits: Partial<Record<Misfit, number>> = {};
  const steps = recurrenceSteps(SHAPE_DIMENSIONS);
  let tried = 0;
  while (bodies.length < count && tried < mostTries) {
    tried += 1;
    const u = steps.map((step) => (0.5 + step * tried) % 1);
    const solved = solveCore(published, startingShape(published.family, u));
    if (solved.kind === 'fits') bodies.push(solved.body);
    else misfits[solved.why] = (misfits[solved.why] ?? 0) + 1;
  }
  return { bodies, tried, misfits };
}

/** Powers of 1/φ_d, where φ_d is the positive root of x^(d+1) = x + 1. */
function recurrenceSteps(dimensions: number): readonly number[] {
  let phi = 2;
  for (let i = 0; i < 60; i++) phi = (1 + phi) ** (1 / (dimensions + 1));
  return Array.from({ length: dimensions }, (_, i) => phi ** -(i + 1) % 1);
}
