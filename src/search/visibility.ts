import { IN_A_GAME, IN_A_NIGHT, overScatter } from '../records/answers/parts/over-scatter.js';
import type { WishedId } from '../records/schemas/reaction-numbers.js';
import type { Visibility } from '../records/schemas/visibilities.js';

/** Differences of the reaction numbers that can be wished for, in the units of answers. */
export type Sizes = Readonly<Record<WishedId, number>>;

/**
 * How well a person could see a difference.
 *
 * @param size     mean differences between two layouts
 * @param scatter  standard deviation of the bowler's shots
 * @param ids      the numbers that count
 */
export function visibility<K extends string>(
  size: Readonly<Record<K, number>>,
  scatter: Readonly<Record<K, number>>,
  ids: readonly K[],
): Visibility {
  const most = overScatter(size, scatter, ids);
  return most < IN_A_NIGHT ? 'unseen' : most < IN_A_GAME ? 'barely' : 'seen';
}
