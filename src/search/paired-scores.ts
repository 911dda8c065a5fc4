import type { Want } from '../records/schemas/want.js';
import type { Outcome } from '../simulate/simulator.js';
import { type Target, targetsOf } from './scoring/target.js';
import { type ScoredOutcomes, scoredOutcomes, shiftTargets } from './scoring/world-statistics.js';
import type { BeliefEffects, BeliefSizes } from './voices/belief-effects.js';
import { believedOutcome, believedReached } from './voices/weighed-voice.js';

/** A layout on some ball in the nominal world, by physics, and what practice adds to it. */
export interface RolledOnce {
  readonly nominal: Outcome;
  /** Relative to the usual middle layout of the first ball. */
  readonly effects: BeliefEffects;
}

/** The same, with outcomes in all worlds but the nominal one. */
export interface RolledInWorlds extends RolledOnce {
  readonly outcomes: readonly Outcome[];
}

/** Reference for wishes where layouts, balls or finishes are compared without a search. */
export interface Field {
  /** Layouts spread over all that may be drilled, on each of the balls; none where there is no wish. */
  readonly attained: readonly RolledOnce[];
  /** The usual middle layout of the first ball, and what the luck of each world does to it. */
  readonly usual: Outcome;
  readonly luck: readonly Outcome[];
}

/**
 * Prepares to score layouts on several balls, rolled in the same worlds, against one set of targets.
 *
 * In each world the targets come from what all the balls attain there, beliefs included, and are shifted by the luck of
 * that world, as in a search (`outcome-cache`).
 *
 * @param sizes  of the beliefs of practice, world by world; null for physics alone
 */
export function pairedScores(
  want: Want,
  { attained, usual, luck }: Field,
  sizes: readonly BeliefSizes[] | null,
): (rolled: RolledInWorlds) => ScoredOutcomes {
  const physical = physicalTargets(want, attained);
  const targetsIn = (world: number): readonly Target[] =>
    sizes === null
      ? physical
      : targetsOf(
          want,
          attained.map(({ nominal, effects }) => believedReached(nominal, effects, sizes[world])),
        );
  const aimed = luck.map((here, world) => shiftTargets(targetsIn(world), here, usual));
  return ({ effects, outcomes: byPhysics }) => {
    const outcomes =
      sizes === null
        ? byPhysics
        : byPhysics.map((outcome, world) => believedOutcome(outcome, effects, sizes[world]));
    return scoredOutcomes(outcomes, aimed);
  };
}

/** What the wishes aim for in the nominal world, by physics. */
export const physicalTargets = (want: Want, attained: Field['attained']): readonly Target[] =>
  targetsOf(
    want,
    attained.map(({ nominal }) => nominal),
  );
