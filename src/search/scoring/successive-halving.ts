import { meanSimple } from 'simple-statistics';
import type { Round } from '../../prepare/budget.js';

/** How a layout did. */
export interface HalvingResult {
  /** Its place in the list. */
  readonly index: number;
  /** For one that dropped out early, shifted by what the worlds it missed did to the survivors. */
  readonly meanScore: number;
  /** Worlds it was scored in. */
  readonly worlds: number;
}

/**
 * Successive halving: scores the items of a list over worlds, the better ones in more worlds. After each round those with the
 * lowest means so far drop out. All meet the same worlds in the same order.
 *
 * @param rounds   the last of them keeps none, and goes through all worlds
 * @param scoreIn  scores some of the list in the world of an index, one after the other
 * @returns best first: those of later rounds come before all that dropped out
 */
export async function successiveHalving(
  count: number,
  worlds: number,
  rounds: readonly Round[],
  scoreIn: (world: number, which: Int32Array, tell: (index: number, score: number) => void) => Promise<void>,
): Promise<readonly HalvingResult[]> {
  const sums = new Float64Array(count);
  let running = Int32Array.from({ length: count }, (_, i) => i);
  let met = 0;
  const groups: { met: number; means: Float64Array; dropped: number[] }[] = [];
  for (const round of rounds) {
    for (; met < Math.min(worlds, round.worlds); met++)
      await scoreIn(met, running, (index, score) => {
        sums[index] += score;
      });
    const means = sums.map((sum) => sum / met);
    const order = [...running].sort((a, b) => means[b] - means[a] || a - b);
    groups.unshift({ met, means, dropped: order.slice(round.keep) });
    running = Int32Array.from(order.slice(0, round.keep));
  }
  const last = groups[0];
  const meanOfLast = (means: Float64Array): number => meanSimple(last.dropped.map((index) => means[index]));
  return groups.flatMap(({ met, means, dropped }) => {
    const missed = meanOfLast(last.means) - meanOfLast(means);
    return dropped.map((index) => ({ index, meanScore: means[index] + missed, worlds: met }));
  });
}
