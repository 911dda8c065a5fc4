import { type FitOverWorlds, fitOverWorlds } from './fit-over-worlds.js';
import type { SmoothColumns } from './smooth-columns.js';

/** What knowing something would be worth to a choice. */
export interface ValueOfKnowing {
  /** Share of worlds in which another choice would then be better by what counts. */
  readonly chance: number;
  /** Expected value of partial perfect information, in the unit of the differences; at least 0. */
  readonly gain: number;
  /** World by world the other choice that would then be made; −1 where the first stays. */
  readonly chosen: readonly number[];
  /** The factor by which fits were shrunk, 0 to 1. */
  readonly trust: number;
}

/**
 * Share of the fits' variance that is not luck, as far as worlds left out tell, below which they count as luck alone: of things that have to do
 * with nothing one or two in a hundred pass.
 */
const LEAST_TRUST = 0.6;

/**
 * The value of knowing something before one of several choices is made, from worlds in which it differs.
 *
 * Each choice's difference from the first, fitted over worlds, is what is expected of it once the thing is known; the mean of the best, less
 * the best of the means, is the gain (Strong, Oakley & Brennan, Med. Decis. Making 34, 311, 2014). The best of several fits is
 * always too good: all are shrunk until they spread as far as what they predict of worlds left out, and count as nothing where that is
 * little. The first choice is taken to be no worse than any other on the mean.
 *
 * @param differences  of each other choice from the first, world by world
 * @param counts       a difference below it changes no choice
 */
export function valueOfKnowing(
  columns: SmoothColumns,
  differences: readonly (readonly number[])[],
  counts: number,
): ValueOfKnowing {
  const worlds = differences[0]?.length ?? 0;
  const fits = differences.map((each) => fitOverWorlds(columns, each));
  const trust = trustIn(fits);
  const best = new Float64Array(worlds);
  const choice = new Int32Array(worlds).fill(-1);
  if (trust > 0)
    for (const [c, { mean, known }] of fits.entries()) {
      const usually = Math.min(0, mean);
      for (let world = 0; world < worlds; world++) {
        const expected = usually + trust * known[world];
        if (expected > best[world]) {
          best[world] = expected;
          choice[world] = c;
        }
      }
    }
  const chosen = Array.from(choice, (c, world) => (best[world] > counts ? c : -1));
  const share = (sum: number): number => (worlds > 0 ? sum / worlds : 0);
  return {
    chance: share(chosen.filter((c) => c >= 0).length),
    gain: share(best.reduce((sum, each) => sum + each, 0)),
    chosen,
    trust,
  };
}

/**
 * The factor on all fits. They predict worlds left out best when shrunk to the share of their variance that is not luck; its square root
 * leaves them as much variance as is not luck.
 */
function trustIn(fits: readonly FitOverWorlds[]): number {
  const together = fits.reduce((sum, { leftOut }) => sum + leftOut.together, 0);
  const alone = fits.reduce((sum, { leftOut }) => sum + leftOut.alone, 0);
  const factor = alone > 0 ? Math.min(1, together / alone) : 0;
  return factor < LEAST_TRUST ? 0 : Math.sqrt(factor);
}
