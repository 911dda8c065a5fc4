/** How much alike two lanes are in what each has of its own: the correlation. Assumed, no source. */
export const LANES_ALIKE = 0.5;

/**
 * How what a lane has of its own depends on independent normal numbers, of which the first lane takes one and each lane that follows one
 * more: all lanes are alike by the same correlation, whichever is first (Cholesky's factor of a matrix of ones and that correlation).
 *
 * @param lane  by its place
 * @param of    the number that a lane brought, by the place of that lane
 */
export function laneWeight(lane: number, of: number): number {
  if (of > lane) return 0;
  let told = 0; // of the variance, by the numbers before
  for (let before = 0; before < of; before++) told += (LANES_ALIKE - told) ** 2 / (1 - told);
  return lane === of ? Math.sqrt(1 - told) : (LANES_ALIKE - told) / Math.sqrt(1 - told);
}
