import type { AnyTrial } from './evaluator.js';
import type { Outcome } from './simulator.js';

/** Trials that several threads roll: each takes the next few that no thread has taken yet. */
export interface SharedTrials {
  readonly trials: readonly AnyTrial[];
  /** How many are taken: one number, in memory that all threads share. */
  readonly taken: Int32Array;
}

/** Outcomes of consecutive trials, the first at place `from` of the list. */
export interface RolledShare {
  readonly from: number;
  readonly outcomes: readonly Outcome[];
}

/** Trials taken at a time: few enough that no thread waits long for the others to finish. */
export const SHARE = 8;

/** Takes the next few trials and rolls them; null when none is left. */
export function takeShare(
  { trials, taken }: SharedTrials,
  roll: (trial: AnyTrial) => Outcome,
): RolledShare | null {
  const from = Atomics.add(taken, 0, SHARE);
  return from < trials.length ? { from, outcomes: trials.slice(from, from + SHARE).map(roll) } : null;
}
