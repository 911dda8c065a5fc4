import { aboutMean, localMeans, meanOf } from './local-means.js';
import { ALIKE_WITHIN, type WorldsAlike } from './worlds-alike.js';

/** Value of information for a choice. */
export interface ValueOfKnowing {
  /** Share of worlds in which another choice would then be expected to be better by more than `counts`. */
  readonly chance: number;
  /** Expected value of partial perfect information, in the unit of the differences; at least 0. */
  readonly gain: number;
  /** For each world the other choice that would then be made; −1 where the first stays. */
  readonly chosen: readonly number[];
  /** Factor on the deviations of local means from the mean; 0 where they show only luck. */
  readonly trust: number;
}

/** Local means flatten a linear dependence on a normal number by this factor (closed form), which trust may make up for. */
const FLATTENED = 1 + ALIKE_WITHIN ** 2;

/**
 * Below this share of `FLATTENED`, a factor counts as luck alone: about one in a hundred irrelevant unknowns passes.
 */
const LEAST_SHARE = 0.55;

/**
 * The value of knowing an unknown before one of several choices is made, from worlds in which it varies.
 *
 * Once the unknown is known, the expected difference of each choice from the first is its local mean over worlds. The gain is the mean of
 * the best local means less the best mean (Strong, Oakley & Brennan, Med. Decis. Making 34, 311, 2014). Local means are used
 * since a polynomial would overshoot where scores level off. The best of several noisy values is biased upward, so the deviations of local
 * means are multiplied by the factor with which they best predict worlds left out (least squares). The first choice counts as no worse than
 * any other in the mean.
 *
 * @param differences  of each other choice from the first, world by world
 * @param counts       least difference that changes a choice
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

/** The factor on predicted deviations from the mean of the other worlds that best fits the actual ones (least squares), each choice in units of its own spread. */
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
