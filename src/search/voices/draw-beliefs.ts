import { scrambledSobol } from '../../math/scrambled-sobol.js';
import { BELIEFS } from '../../records/shared/beliefs.js';
import { DRAWN_COORDINATES } from '../../simulate/worlds/draws.js';
import type { BeliefSizes } from './belief-effects.js';

/** The chance that a belief holds in a world, 0 to 1: one for all until logged shots tell them apart (`belief-chance.ts`). */
export type ChanceOf = (belief: (typeof BELIEFS)[number]) => number;

/**
 * What practice's beliefs come to in each of some worlds: a discrepancy of the engine, added to what it computes (Kennedy & O'Hagan, J. R.
 * Statist. Soc. B 63, 425, 2001). In each world a belief holds or not, and if it does its size lies anywhere in its range.
 *
 * With a greater chance a belief holds in the same worlds and in others; with none nothing is added anywhere.
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

/** What each belief comes to on the mean over worlds. */
export const expectedSizes = (chanceOf: ChanceOf): BeliefSizes =>
  BELIEFS.map((belief, b) => chanceOf(belief) * MIDDLE_SIZES[b]);

/** A place in a belief's range of sizes, 0 to 1, as a share of the most. */
function sizeAt({ least, most }: (typeof BELIEFS)[number], place: number): number {
  return (least + (most - least) * place) / most;
}
