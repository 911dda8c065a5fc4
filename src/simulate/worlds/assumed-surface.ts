import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { from, INCH } from '../../base/units.js';
import { exp } from '../../math/exp.js';
import { power } from '../../math/power.js';
import { FRICTION_PRIOR } from '../../records/shared/friction-prior.js';
import type { Drawn, Draws } from './draws.js';

/** The numbers of lane and cover that are not measured at the counter; each has a middle and a range. */
export interface AssumedSurface {
  /** Factors on the lane's friction on heavy oil and on dry boards. */
  readonly frictionOiledFactor: number;
  readonly frictionDryFactor: number;
  /** Film (units of oil) over which friction falls from dry toward oiled by a factor e. */
  readonly filmScale: number;
  /** How friction falls in thick oil (`law-shape.ts`): 0 as an exponential, 1 as a hyperbola, which still grips. */
  readonly lawShape: number;
  /** How fast friction falls with a finer finish, on oil and on dry boards alike: friction ∝ grit^−exponent. */
  readonly finishExponent: number;
  /** Width of the oil band that a passing contact leaves on the ball, m. */
  readonly bandWidth: number;
  /** Share of the lane's film that a passing contact keeps. */
  readonly carriedShare: number;
  /** Share of a ring's oil that a pass of the contact right over it takes off. */
  readonly wornPerPass: number;
  /** Share of the film in the middle of the track that the first game takes away. */
  readonly burnPerGame: number;
  /** Share of the oil so taken that comes to lie past the pattern's end. */
  readonly carriedDown: number;
}

const [OILED, DRY, FILM_SCALE, FINISH_EXPONENT] = FRICTION_PRIOR.median;

/** Kinetic friction on heavy oil and on dry boards, at the reference finish, of a lane that states none. */
export const USUAL_FRICTION = { oiled: OILED, dry: DRY } as const;

/*
 * Friction is as uncertain as `shared/friction.json` says. The rest are assumptions of this project, no published source: how
 * oil carried on the ball's own rings lowers friction and wears off again, and how fast games wear a pattern down. Logged
 * shots could narrow them.
 */
export const NOMINAL_SURFACE: AssumedSurface = {
  frictionOiledFactor: 1,
  frictionDryFactor: 1,
  filmScale: FILM_SCALE,
  lawShape: 0,
  finishExponent: FINISH_EXPONENT,
  bandWidth: from(0.25, INCH),
  carriedShare: 0.15,
  wornPerPass: 0.3,
  burnPerGame: 0.06,
  carriedDown: 0.003,
};

/** Eight in ten draws of friction lie within this many standard deviations. */
const EIGHT_IN_TEN = 1.2816;

/** The friction that lies this many standard deviations from the middle in each number, taken one at a time. */
const frictionAt = (deviations: number) => {
  const [oiled, dry, filmScale, finishExponent] = FRICTION_PRIOR.logDeviation.map((each) =>
    exp(deviations * each),
  );
  return {
    frictionOiledFactor: oiled,
    frictionDryFactor: dry,
    filmScale: FILM_SCALE * filmScale,
    lawShape: 0,
    finishExponent: FINISH_EXPONENT * finishExponent,
  };
};

/** Of one more than the shape, in its logarithm: one law in ten falls more slowly than a hyperbola. Assumed, no source. */
const LAW_SHAPE_DEVIATION = Math.LN2 / EIGHT_IN_TEN;

/** Ends of the assumed ranges; of friction's, eight in ten draws lie between. */
export const LOW_SURFACE: AssumedSurface = {
  ...frictionAt(-EIGHT_IN_TEN),
  bandWidth: from(0.15, INCH),
  carriedShare: 0.05,
  wornPerPass: 0,
  burnPerGame: 0.03,
  carriedDown: 0,
};

export const HIGH_SURFACE: AssumedSurface = {
  ...frictionAt(EIGHT_IN_TEN),
  bandWidth: from(0.4, INCH),
  carriedShare: 0.3,
  wornPerPass: 0.7,
  burnPerGame: 0.09,
  carriedDown: 0.01,
};

/** Draws further out than this count as this far, standard deviations. */
const FARTHEST = 2.5;

/** What is drawn of friction, in the order of `shared/friction.json`. */
const FRICTION_NUMBERS = ['frictionOiled', 'frictionDry', 'filmScale', 'finishExponent'] as const;

/** Turns independent normal numbers into correlated ones. */
const CORRELATING = new CholeskyDecomposition(
  new Matrix(FRICTION_PRIOR.correlation.map((row) => [...row])),
).lowerTriangularMatrix.to2DArray();

/** One way lane and cover may be. */
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
    filmScale: FILM_SCALE * filmScale,
    lawShape: exp(LAW_SHAPE_DEVIATION * normal('lawShape')) - 1,
    finishExponent: FINISH_EXPONENT * finishExponent,
    bandWidth: between('bandWidth'),
    carriedShare: between('carriedShare'),
    wornPerPass: between('wornPerPass'),
    burnPerGame: between('burnPerGame'),
    carriedDown: between('carriedDown'),
  };
}

/** Finish at which a cover is taken to have the lane's own friction, grit. */
export const REFERENCE_GRIT = 2000;

/** Greatest friction of a legal ball on a dry lane (secondary, USBC), and the least that the sport's materials allow (no source). */
const GREATEST_FRICTION = 0.32;
const LEAST_FRICTION = 0.005;

/**
 * Friction of a cover on a lane: on heavy oil and on dry boards, and the film scale between them.
 *
 * A coarser finish grips more on both by the same factor. **An assumption of flarewise: no measured law is at hand.**
 *
 * @param lane  at the reference finish
 * @param grit  the cover's finish
 */
export function frictionOf(
  lane: { readonly frictionOiled: number; readonly frictionDry: number },
  grit: number,
  { frictionOiledFactor, frictionDryFactor, filmScale, finishExponent }: AssumedSurface,
): { readonly oiled: number; readonly dry: number; readonly filmScale: number } {
  const finish = power(REFERENCE_GRIT / grit, finishExponent);
  const dry = Math.min(GREATEST_FRICTION, lane.frictionDry * frictionDryFactor * finish);
  const oiled = Math.min(dry, Math.max(LEAST_FRICTION, lane.frictionOiled * frictionOiledFactor * finish));
  return { oiled, dry, filmScale };
}
