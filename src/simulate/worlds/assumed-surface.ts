import { from, INCH } from '../../base/units.js';
import { exp } from '../../math/exp.js';
import { FRICTION_PRIOR } from '../../records/shared/friction-prior.js';

/** The numbers of lane and cover that are not measured in a shop; each has a middle and a range. */
export interface AssumedSurface {
  /** Factors on the lane's friction on heavy oil and on dry boards. */
  readonly frictionOiledFactor: number;
  readonly frictionDryFactor: number;
  /** Film (units of oil) over which friction falls from dry toward oiled by a factor e. */
  readonly filmScale: number;
  /** How friction falls in thick oil (`law-shape.ts`): 0 as an exponential, 1 as a hyperbola, which still grips. */
  readonly lawShape: number;
  /** How fast friction on oil falls with a finer finish: friction ∝ grit^−exponent. */
  readonly finishExponent: number;
  /** Share of that exponent with which friction on dry boards falls. */
  readonly finishOnDry: number;
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

/**
 * The middle of every number. Friction and its uncertainty are those of `shared/friction.json`. The rest are assumptions of this project
 * without a published source: how much less a finish counts on dry boards, how oil on the ball's own rings lowers friction and wears off
 * again, and how fast games wear a pattern down. Logged shots narrow them.
 */
export const NOMINAL_SURFACE: AssumedSurface = {
  frictionOiledFactor: 1,
  frictionDryFactor: 1,
  filmScale: FILM_SCALE,
  lawShape: 0,
  finishExponent: FINISH_EXPONENT,
  finishOnDry: 0.3,
  bandWidth: from(0.25, INCH),
  carriedShare: 0.15,
  wornPerPass: 0.3,
  burnPerGame: 0.06,
  carriedDown: 0.003,
};

/** Eight in ten draws of friction lie within this many standard deviations. */
export const EIGHT_IN_TEN = 1.2816;

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

/** Ends of the assumed ranges; eight in ten draws of friction lie between them. */
export const LOW_SURFACE: AssumedSurface = {
  ...frictionAt(-EIGHT_IN_TEN),
  finishOnDry: 0,
  bandWidth: from(0.15, INCH),
  carriedShare: 0.05,
  wornPerPass: 0,
  burnPerGame: 0.03,
  carriedDown: 0,
};

export const HIGH_SURFACE: AssumedSurface = {
  ...frictionAt(EIGHT_IN_TEN),
  finishOnDry: 0.7,
  bandWidth: from(0.4, INCH),
  carriedShare: 0.3,
  wornPerPass: 0.7,
  burnPerGame: 0.09,
  carriedDown: 0.01,
};
