/**
 * How large a change is beside the scatter of single shots: the greatest, over some reaction numbers, of its size as a share of
 * their standard deviation.
 */
export const overScatter = <K extends string>(
  size: Readonly<Record<K, number>>,
  scatter: Readonly<Record<K, number>>,
  ids: readonly K[],
): number => Math.max(...ids.map((id) => Math.abs(size[id]) / Math.max(scatter[id], Number.EPSILON)));

/**
 * From which share of the scatter of single shots on a difference is seen. With 30 shots of each, a night's, two means differ by
 * chance by up to half of it in 19 of 20 nights (2 √(2/30)); with 8 of each, a game's, by up to all of it (2 √(2/8)).
 */
export const IN_A_NIGHT = 0.5;
export const IN_A_GAME = 1;
