import { from, INCH } from '../units.js';

/** The numbers of lane and cover that nobody measures at the counter; each has a middle and a range. */
export interface AssumedRanges {
  /** Factor on the lane's dry friction. */
  readonly frictionDryFactor: number;
  /** Film (units of oil) over which friction falls from dry toward oiled by a factor e. */
  readonly filmScale: number;
  /** Width of the oil band that a passing contact leaves on the ball, m. */
  readonly bandWidth: number;
  /** Share of the lane's film that a passing contact keeps. */
  readonly carriedShare: number;
  /** Share of the film in the middle of the track that the first game takes away. */
  readonly burnPerGame: number;
  /** Share of the oil so taken that comes to lie past the pattern's end. */
  readonly carriedDown: number;
}

/*
 * Assumptions of this project, no published source: how friction depends on the film, how oil carried on the
 * ball's own rings lowers it, and how fast games wear a pattern down. The ranges span what left recognisable
 * skid, hook and roll on every demo lane; logged shots could narrow them.
 */
export const NOMINAL_SURFACE: AssumedRanges = {
  frictionDryFactor: 1,
  filmScale: 5,
  bandWidth: from(0.25, INCH),
  carriedShare: 0.15,
  burnPerGame: 0.015,
  carriedDown: 0.05,
};

export const LOW_SURFACE: AssumedRanges = {
  frictionDryFactor: 0.85,
  filmScale: 3.5,
  bandWidth: from(0.15, INCH),
  carriedShare: 0.05,
  burnPerGame: 0.0075,
  carriedDown: 0.02,
};

export const HIGH_SURFACE: AssumedRanges = {
  frictionDryFactor: 1.15,
  filmScale: 7,
  bandWidth: from(0.4, INCH),
  carriedShare: 0.3,
  burnPerGame: 0.03,
  carriedDown: 0.1,
};

/** Finish at which a cover is taken to have the lane's own friction, grit. */
const REFERENCE_GRIT = 2000;

/** How fast friction on dry boards falls with a finer finish: friction ∝ grit^−0.12. Assumed, no source. */
const GRIT_EXPONENT = 0.12;

/** Factor on dry friction for a cover's finish: 1.18 at 500 grit, 0.92 at 4000. */
export const gritFactor = (grit: number): number => (REFERENCE_GRIT / grit) ** GRIT_EXPONENT;

/** Greatest friction of a legal ball on a dry lane (secondary, USBC). */
export const GREATEST_FRICTION = 0.32;
