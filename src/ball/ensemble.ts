import type { BallBody } from './ball-body.js';
import { type CoverSpan, SHAPE_DIMENSIONS, startingCover, startingShape } from './core-families.js';
import { differ } from './differ.js';
import { lastHolding } from './last-holding.js';
import type { PublishedNumbers } from './published.js';
import { type Misfit, misfitOfCover, type SolvedCore, solveCore } from './solve-core.js';

/** Differing cores that all have a ball's published numbers. */
export interface Ensemble {
  readonly bodies: readonly BallBody[];
  /** Which starting points led to them: all it takes to make them again. */
  readonly points: readonly number[];
  /** Starting points tried, and how many failed for each reason. */
  readonly tried: number;
  readonly misfits: Readonly<Partial<Record<Misfit, number>>>;
}

/** Starting points tried before giving up. */
const MOST_TRIES = 10_000;

/**
 * Tells apart searches that may find different cores: whoever remembers what was found must find it anew under
 * another edition. It is a fingerprint of what is found for the balls of its test, which fails when it is out of date.
 */
export const SEARCH_EDITION = '3b23b297d732f88d';

/**
 * Finds cores of the ball's family that all have its published numbers.
 *
 * Any two of them differ (`differ`). Fewer bodies than asked for, or none, means that such a core is rare or
 * impossible; `misfits` says why. The first of many are the same as few.
 */
export function fitEnsemble(published: PublishedNumbers, count: number, mostTries = MOST_TRIES): Ensemble {
  const hopeless = misfitOfCover(published, LEAST_COVER);
  if (hopeless) return { bodies: [], points: [], tried: 1, misfits: { [hopeless]: 1 } };
  const coreAt = coreSearch(published);
  const bodies: BallBody[] = [];
  const points: number[] = [];
  const misfits: Partial<Record<Misfit, number>> = {};
  let tried = 0;
  while (bodies.length < count && tried < mostTries) {
    tried += 1;
    const solved = coreAt(tried);
    if (solved.kind === 'misfit') misfits[solved.why] = (misfits[solved.why] ?? 0) + 1;
    else if (bodies.every((body) => differ(body, solved.body))) {
      bodies.push(solved.body);
      points.push(tried);
    }
  }
  return { bodies, points, tried, misfits };
}

/** The bodies of an ensemble from its points alone, the same to the last digit; null when a point leads to none. */
export function bodiesAt(published: PublishedNumbers, points: readonly number[]): readonly BallBody[] | null {
  const coreAt = coreSearch(published);
  const bodies: BallBody[] = [];
  for (const n of points) {
    const solved = coreAt(n);
    if (solved.kind === 'misfit') return null;
    bodies.push(solved.body);
  }
  return bodies;
}

/** The thinnest and lightest cover: it leaves the core most, so that what speaks against it speaks against all. */
const LEAST_COVER = startingCover([0, 0], { thickness: 0, density: 0 });

/** Prepares the search: n-th starting point ↦ the core it leads to. */
function coreSearch(published: PublishedNumbers): (n: number) => SolvedCore {
  const span = coverSpan(published);
  return (n) => {
    const u = startingPoint(n);
    const why = misfitOfCover(published, startingCover(u, span)); // at a glance; a shape takes ten times as long
    if (why) return { kind: 'misfit', why };
    const start = startingShape(published.family, u, span);
    return solveCore(published, start, towardEnds(u[SHAPE_DIMENSIONS]));
  };
}

/** The least span that leaves out only covers with which no core works. */
function coverSpan(published: PublishedNumbers): CoverSpan {
  const mayWork = (span: CoverSpan): boolean =>
    misfitOfCover(published, startingCover([1, 1], span)) === null;
  const alone = (trait: keyof CoverSpan): number =>
    lastHolding((share) => mayWork({ thickness: 0, density: 0, [trait]: share }), 0, 1, SPAN_HALVINGS);
  return { thickness: alone('thickness'), density: alone('density') };
}

const SPAN_HALVINGS = 20;
/** More often near 0 and near 1 than between: cores that are as large, or as small, as can be drill most differently. */
const towardEnds = (v: number): number => v * v * (3 - 2 * v);

/**
 * The n-th point of an additive-recurrence sequence in the unit cube (the generalised golden ratio; Roberts, 2018,
 * from memory): evenly spread, without a seed, the same on every machine.
 */
const startingPoint = (n: number): readonly number[] => STEPS.map((step) => (0.5 + step * n) % 1);

/** Powers of 1/φ_d, where φ_d is the positive root of x^(d+1) = x + 1. */
const STEPS: readonly number[] = (() => {
  const dimensions = SHAPE_DIMENSIONS + 1;
  let phi = 2;
  for (let i = 0; i < 60; i++) phi = (1 + phi) ** (1 / (dimensions + 1));
  return Array.from({ length: dimensions }, (_, i) => phi ** -(i + 1) % 1);
})();
