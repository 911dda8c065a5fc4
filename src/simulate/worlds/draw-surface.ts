import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { exp } from '../../math/exp.js';
import { FRICTION_PRIOR } from '../../records/shared/friction-prior.js';
import {
  type AssumedSurface,
  EIGHT_IN_TEN,
  HIGH_SURFACE,
  LOW_SURFACE,
  NOMINAL_SURFACE,
} from './assumed-surface.js';
import type { Drawn, Draws } from './draws.js';

/** Standard deviation of ln(1 + shape): one law in ten falls more slowly than a hyperbola. Assumed, no source. */
const LAW_SHAPE_DEVIATION = Math.LN2 / EIGHT_IN_TEN;

/** Draws are cut off at this many standard deviations. */
const FARTHEST = 2.5;

/** The numbers drawn for friction, in the order of `shared/friction.json`. */
const FRICTION_NUMBERS = ['frictionOiled', 'frictionDry', 'filmScale', 'finishExponent'] as const;

/** Cholesky factor that turns independent normal numbers into correlated ones. */
const CORRELATING = new CholeskyDecomposition(
  new Matrix(FRICTION_PRIOR.correlation.map((row) => [...row])),
).lowerTriangularMatrix.to2DArray();

/** Draws the numbers of lane and cover. */
export function drawSurface({ normal, within }: Draws): AssumedSurface {
  const independent = FRICTION_NUMBERS.map(normal);
  const [oiled, dry, filmScale, finishExponent] = CORRELATING.map((row, i) => {
    const z = row.reduce((sum, each, j) => sum + each * independent[j], 0);
    return exp(FRICTION_PRIOR.logDeviation[i] * Math.max(-FARTHEST, Math.min(FARTHEST, z)));
  });
  const between = (what: keyof AssumedSurface & Drawn): number =>
    within(what, LOW_SURFACE[what], HIGH_SURFACE[what]);
  return {
    frictionOiledFactor: oiled,
    frictionDryFactor: dry,
    filmScale: NOMINAL_SURFACE.filmScale * filmScale,
    lawShape: exp(LAW_SHAPE_DEVIATION * normal('lawShape')) - 1,
    finishExponent: NOMINAL_SURFACE.finishExponent * finishExponent,
    finishOnDry: between('finishOnDry'),
    bandWidth: between('bandWidth'),
    carriedShare: between('carriedShare'),
    wornPerPass: between('wornPerPass'),
    burnPerGame: between('burnPerGame'),
    carriedDown: between('carriedDown'),
  };
}
