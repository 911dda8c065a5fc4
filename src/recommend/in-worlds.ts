import { quantileSorted } from 'simple-statistics';
import type { Band } from '../records/answer.js';
import { score } from './score.js';
import type { Outcome } from './simulator.js';
import { type Reached, type Target, WISHES } from './target.js';

/** What one layout does over all worlds but the nominal. */
export interface InWorlds {
  readonly outcomes: readonly Outcome[];
  readonly scores: readonly number[];
  readonly meanScore: number;
}

/**
 * Scores a layout in every world.
 *
 * A wish is about what layouts can change, so in each world it is moved along with what luck (a slower shot,
 * a drier lane) does to any ball: what it does to the usual middle layout, marked exactly, with the most
 * typical core. What is left to each layout is how it takes errors of marking, other cores and that luck.
 *
 * @param outcomes   one per world
 * @param luck       the usual middle layout's in the same worlds, but for marking and core
 * @param atNominal  the usual middle layout's in the nominal world
 */
export function inWorlds(
  outcomes: readonly Outcome[],
  luck: readonly Outcome[],
  atNominal: Outcome,
  targets: readonly Target[],
): InWorlds {
  const scores = outcomes.map((outcome, i) => score(outcome, shiftTargets(targets, luck[i], atNominal)));
  return { outcomes, scores, meanScore: scores.reduce((sum, s) => sum + s, 0) / scores.length };
}

/** Targets moved along with what a world's luck does to the usual middle layout. */
export const shiftTargets = (
  targets: readonly Target[],
  here: Reached,
  nominal: Reached,
): readonly Target[] =>
  here.shot === 'pins' && nominal.shot === 'pins'
    ? targets.map((target) => {
        const luck = WISHES[target.wish](here) - WISHES[target.wish](nominal);
        return { ...target, value: target.value + luck };
      })
    : targets;

/** Share of worlds in which `a` scores above `b`; a tie counts half. Both met the same worlds. */
export function shareAbove(a: InWorlds, b: InWorlds): number {
  const wins = a.scores.reduce((sum, s, i) => sum + (s > b.scores[i] ? 1 : s === b.scores[i] ? 0.5 : 0), 0);
  return wins / a.scores.length;
}

/** 5th to 95th percentile. */
export function bandOf(values: readonly number[]): Band {
  const sorted = [...values].sort((a, b) => a - b);
  return { low: quantileSorted(sorted, 0.05), high: quantileSorted(sorted, 0.95) };
}

/** Band of a reaction number over the worlds in which the ball reached the pins; all of them when none did. */
export function bandAtPins(rows: readonly Outcome[], pick: (outcome: Outcome) => number): Band {
  const reached = rows.filter((row) => row.shot === 'pins');
  return bandOf((reached.length > 0 ? reached : rows).map(pick));
}
