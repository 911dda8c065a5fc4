import type { BeliefFinding } from '../records/answers/statements/beliefs.js';

/** A change of a reaction number hardly shows below this share of the belief's greatest size. */
const SHOWS = 0.2;

/**
 * Whether physics finds what a belief says.
 *
 * @param change  by physics; null where it could not be tried
 * @param most    the greatest size of the belief, with its sign, in the same unit
 */
export function beliefVerdict(change: number | null, most: number): BeliefFinding['params']['verdict'] {
  if (change === null) return 'not-tried';
  if (Math.abs(change) < SHOWS * Math.abs(most)) return 'hardly-shows';
  return Math.sign(change) === Math.sign(most) ? 'agrees' : 'disagrees';
}
