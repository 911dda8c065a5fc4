import type { AnyTrial } from './evaluator.js';
import type { Outcome } from './simulator.js';

/** Trials that several threads roll: each takes the next few that none has taken yet. */
export interface SharedTrials {
  readonly trials: readonly AnyTrial[];
  /** How many are taken; one number that all threads see. */
  readonly taken: Int32Array;
}

/** What came of some trials, from a place in their list on. */
export interface RolledShare {
  readonly from: number;
  readonly outcomes: readonly Outcome[];
}

/** Trials taken at a time: few enough that no thread waits long for the last ones. */
export const SHARE = 8;

/** Takes the next few trials and rolls them; null when none is left. */
export function takeShare(
  { trials, taken }: SharedTrials,
  roll: (trial: AnyTrial) => Outcome,
): RolledShare | null {
  const from = Atomics.add(taken, 0, SHARE);
  return from < trials.length ? { from, outcomes: trials.slice(from, from + SHARE).map(roll) } : null;
}
