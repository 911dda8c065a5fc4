import { aboutMean, localMeans, meanOf } from './local-means.js';
import { ALIKE_WITHIN, type WorldsAlike } from './worlds-alike.js';

/** What knowing something would be worth to a choice. */
export interface ValueOfKnowing {
  /** Share of worlds in which another choice would then be better by what counts. */
  readonly chance: number;
  /** Expected value of partial perfect information, in the unit of the differences; at least 0. */
  readonly gain: number;
  /** World by world the other choice that would then be made; −1 where the first stays. */
  readonly chosen: readonly number[];
  /** The factor on what local means say beyond the mean; 0 where they show nothing but luck. */
  readonly trust: number;
}

/** Local means of a normal number lie so much nearer to its mean than the number they follow (closed form). */
const FLATTENED = 1 + ALIKE_WITHIN ** 2;

/**
 * Share of what local means say that is not luck, as far as worlds left out tell, below which it counts as luck alone: of things that
 * have to do with nothing about one in a hundred passes.
 */
const LEAST_SHARE = 0.55;

/**
 * The value of knowing something before one of several choices is made, from worlds in which it differs.
 *
 * Each choice's difference from the first, as a local mean over worlds, is what is expected of it once the thing is known; the mean of the best,
 * less the best of the means, is the gain (Strong, Oakley & Brennan, Med. Decis. Making 34, 311, 2014). Local means, for where scores
 * level off a polynomial would promise what no world shows. The best of several is always too good, so all are multiplied by the factor
 * with which they predict worlds that are left out best (least squares). The first choice is taken to be no worse than any other on the
 * mean.
 *
 * @param differences  of each other choice from the first, world by world
 * @param counts       a difference below it changes no choice
 */
export function valueOfKnowing(
  alike: WorldsAlike,
  differences: readonly Float64Array[],
  counts: number,
): ValueOfKnowing {
  const worlds = alike.whole.length;
  const predicted = differences.map((each) => localMeans(alike.whole, each));
  const trust = trustIn(differences, predicted);
  const best = new Float64Array(worlds);
  const choice = new Int32Array(worlds).fill(-1);
  if (trust > 0)
    for (const [c, values] of differences.entries()) {
      const usually = Math.min(0, meanOf(values));
      const known = aboutMean(alike.known === alike.whole ? predicted[c] : localMeans(alike.known, values));
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

/** The factor with which predictions beyond the mean of the other worlds come nearest to the truth, each choice over its own spread. */
function trustIn(differences: readonly Float64Array[], predicted: readonly Float64Array[]): number {
  let together = 0;
  let alone = 0;
  for (const [c, values] of differences.entries()) {
    const worlds = values.length;
    const mean = meanOf(values);
    let [product, square, spread] = [0, 0, 0];
    for (let world = 0; world < worlds; world++) {
      const off = values[world] - mean;
      const meanOfOthers = mean - off / (worlds - 1);
      const said = predicted[c][world] - meanOfOthers;
      product += said * (values[world] - meanOfOthers);
      square += said ** 2;
      spread += off ** 2;
    }
    if (spread === 0) continue;
    together += product / spread;
    alone += square / spread;
  }
  const factor = alone > 0 ? Math.min(FLATTENED, together / alone) : 0;
  return factor < LEAST_SHARE * FLATTENED ? 0 : factor;
}
