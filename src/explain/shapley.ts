import type { LayoutNumbers } from '../records/text/layout-text.js';

/** The eight layouts between a reference and another: bit i takes number i from the other. */
export const mixtures = (reference: LayoutNumbers, other: LayoutNumbers): readonly LayoutNumbers[] =>
  Array.from({ length: 8 }, (_, mask) => ({
    drillingAngleDeg: (mask & 1 ? other : reference).drillingAngleDeg,
    pinToPapIn: (mask & 2 ? other : reference).pinToPapIn,
    valAngleDeg: (mask & 4 ? other : reference).valAngleDeg,
  }));

/**
 * Exact Shapley shares of three numbers in a value's change from mixture 0 to mixture 7.
 *
 * Each share is the number's effect averaged over all orders of changing one number after another; the
 * shares add up to the whole change. (Shapley, Contributions to the Theory of Games II, 1953.)
 *
 * @param values  of the eight mixtures, indexed by bit mask
 */
export function shapleyShares(values: readonly number[]): readonly [number, number, number] {
  const share = (player: number): number => {
    const bit = 1 << player;
    let sum = 0;
    for (let others = 0; others < 8; others++) {
      if (others & bit) continue;
      const size = (others & 1) + ((others >> 1) & 1) + ((others >> 2) & 1);
      sum += ORDERS[size] * (values[others | bit] - values[others]);
    }
    return sum;
  };
  return [share(0), share(1), share(2)];
}

/** |S|! (2 − |S|)! / 3! for |S| = 0, 1, 2. */
const ORDERS = [1 / 3, 1 / 6, 1 / 3] as const;
