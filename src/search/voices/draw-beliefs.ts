import { scrambledSobol } from '../../math/scrambled-sobol.js';
import { BELIEFS } from '../../records/shared/beliefs.js';
import { DRAWN_COORDINATES } from '../../simulate/worlds/draws.js';
import type { BeliefSizes } from './belief-effects.js';

/** The chance that a belief holds in a world, 0 to 1: the same for all beliefs unless shots are logged (`belief-chance.ts`). */
export type ChanceOf = (belief: (typeof BELIEFS)[number]) => number;

/**
 * Sizes of practice's beliefs in each of some worlds: a model discrepancy, added to what the engine computes (Kennedy & O'Hagan, J. R.
 * Statist. Soc. B 63, 425, 2001). In each world a belief holds or not; if it holds, its size is uniform over its range.
 *
 * If its chance grows, a belief holds in the same worlds and in additional ones; with a chance of 0 it holds in none.
 */
export const drawBeliefs = (seed: number, count: number, chanceOf: ChanceOf): readonly BeliefSizes[] =>
  Array.from({ length: count }, (_, n) =>
    BELIEFS.map((belief, b) => {
      const drawn = scrambledSobol(n, DRAWN_COORDINATES + b, seed);
      const chance = chanceOf(belief);
      return drawn < chance ? sizeAt(belief, drawn / chance) : 0;
    }),
  );

/** The middle of each belief's range. */
export const MIDDLE_SIZES: BeliefSizes = BELIEFS.map((belief) => sizeAt(belief, 0.5));

/** Mean size of each belief over worlds. */
export const expectedSizes = (chanceOf: ChanceOf): BeliefSizes =>
  BELIEFS.map((belief, b) => chanceOf(belief) * MIDDLE_SIZES[b]);

/** A place in a belief's range of sizes, 0 to 1, as a share of the most. */
function sizeAt({ least, most }: (typeof BELIEFS)[number], place: number): number {
  return (least + (most - least) * place) / most;
}
