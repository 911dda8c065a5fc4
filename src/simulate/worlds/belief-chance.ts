import type { Belief } from '../../records/shared/beliefs.js';
import type { Learned } from './learned.js';

/**
 * The chance that each belief of practice holds: the weight of practice, updated by logged shots (odds times the Bayes
 * factor; Kass & Raftery, J. Am. Statist. Assoc. 90, 773, 1995).
 *
 * @param weight  of practice beside physics, 0 to 1; at 0 and 1 logged shots change nothing
 */
export const beliefChance =
  (weight: number, learned?: Pick<Learned, 'beliefFactors'>): ((belief: Belief) => number) =>
  ({ id }) => {
    const factor = learned?.beliefFactors[id] ?? 1;
    return factor === 1 ? weight : (weight * factor) / (weight * factor + 1 - weight);
  };
