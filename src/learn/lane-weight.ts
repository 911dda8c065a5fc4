/** Correlation between two lanes of what belongs to each lane. Assumed, no source. */
export const LANES_ALIKE = 0.5;

/**
 * Weights with which independent standard normal numbers make up what belongs to each lane, so that any two lanes have the same
 * correlation: an entry of the Cholesky factor of a matrix of ones with `LANES_ALIKE` off the diagonal.
 *
 * @param lane  row: a lane's place
 * @param of    column: the place of the lane that introduces the number
 */
export function laneWeight(lane: number, of: number): number {
  if (of > lane) return 0;
  let explained = 0; // share of the variance due to the columns before
  for (let before = 0; before < of; before++) explained += (LANES_ALIKE - explained) ** 2 / (1 - explained);
  return lane === of ? Math.sqrt(1 - explained) : (LANES_ALIKE - explained) / Math.sqrt(1 - explained);
}
