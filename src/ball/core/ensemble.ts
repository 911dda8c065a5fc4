import { power } from '../../math/power.js';
import type { BallBody } from '../drill/ball-body.js';
import { SHAPE_DIMENSIONS, startingShape } from './core-families.js';
import { differ } from './differ.js';
import { BUILD_DIMENSIONS, buildDrawer, misfitOfAll } from './draw-build.js';
import type { PublishedNumbers } from './published.js';
import { type Misfit, misfitOfBuild, type SolvedCore, solveCore } from './solve-core.js';

/** Different cores that all give a ball its published numbers. */
export interface Ensemble {
  readonly bodies: readonly BallBody[];
  /** Starting points tried, and how many failed for each reason. */
  readonly tried: number;
  readonly misfits: Readonly<Partial<Record<Misfit, number>>>;
}

/** Starting points tried before giving up. */
const MOST_TRIES = 40_000;

/**
 * Finds cores of the ball's family that all give it its published numbers.
 *
 * Any two of them differ (`differ`). Fewer bodies than asked for, or none, means that such cores are rare or
 * impossible; `misfits` says why. Asking for more bodies keeps the first ones the same.
 */
export function fitEnsemble(published: PublishedNumbers, count: number, mostTries = MOST_TRIES): Ensemble {
  const hopeless = misfitOfAll(published);
  if (hopeless) return { bodies: [], tried: 1, misfits: { [hopeless]: 1 } };
  const coreAt = coreSearch(published);
  const bodies: BallBody[] = [];
  const misfits: Partial<Record<Misfit, number>> = {};
  let tried = 0;
  while (bodies.length < count && tried < mostTries) {
    tried += 1;
    const solved = coreAt(tried);
    if (solved.kind === 'misfit') misfits[solved.why] = (misfits[solved.why] ?? 0) + 1;
    else if (bodies.every((body) => differ(body, solved.body))) bodies.push(solved.body);
  }
  return { bodies, tried, misfits };
}

/** Prepares the search: n-th starting point ↦ the core it leads to. */
function coreSearch(published: PublishedNumbers): (n: number) => SolvedCore {
  const drawBuild = buildDrawer(published);
  return (n) => {
    const [fillerShare, ...u] = startingPoint(n);
    const build = drawBuild(u);
    const why = misfitOfBuild(published, build); // a quick check: a shape takes ten times as long
    if (why) return { kind: 'misfit', why };
    const core = startingShape(published.family, u.slice(BUILD_DIMENSIONS), published.lobes);
    return solveCore(published, { ...build, core }, towardEnds(fillerShare));
  };
}

/** Maps 0 to 1 onto itself with more values near the ends: the largest and the smallest possible cores differ most once drilled. */
const towardEnds = (v: number): number => v * v * (3 - 2 * v);

/**
 * The n-th point of an additive-recurrence sequence in the unit cube (the generalised golden ratio; Roberts, 2018,
 * from memory): evenly spread, without a seed, the same on every machine.
 */
const startingPoint = (n: number): readonly number[] => STEPS.map((step) => (0.5 + step * n) % 1);

/** Powers of 1/φ_d, where φ_d is the positive root of x^(d+1) = x + 1. */
const STEPS: readonly number[] = (() => {
  const dimensions = 1 + BUILD_DIMENSIONS + SHAPE_DIMENSIONS; // the first is the filler's share
  let phi = 2;
  for (let i = 0; i < 60; i++) phi = power(1 + phi, 1 / (dimensions + 1));
  return Array.from({ length: dimensions }, (_, i) => power(phi, -(i + 1)) % 1);
})();
