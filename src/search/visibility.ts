import type { WishedId } from '../records/schemas/reaction-numbers.js';

/** Differences of the reaction numbers that can be wished for, in the units of answers. */
export type Sizes = Readonly<Record<WishedId, number>>;

/** How well a person could see a difference between two layouts. */
export const VISIBILITIES = ['unseen', 'barely', 'seen'] as const;
export type Visibility = (typeof VISIBILITIES)[number];

/**
 * From which share of the scatter of single shots on a difference is seen. With 30 shots of each, a night's, two means differ by chance by up to
 * half of it in 19 of 20 nights (2 √(2/30)); with 8 of each, a game's, by up to all of it (2 √(2/8)).
 */
const IN_A_NIGHT = 0.5;
const IN_A_GAME = 1;

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
  const most = Math.max(...ids.map((id) => Math.abs(size[id]) / Math.max(scatter[id], Number.EPSILON)));
  return most < IN_A_NIGHT ? 'unseen' : most < IN_A_GAME ? 'barely' : 'seen';
}
