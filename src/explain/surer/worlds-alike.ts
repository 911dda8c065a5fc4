import { meanSimple, sampleStandardDeviation } from 'simple-statistics';
import { exp } from '../../math/exp.js';

/** One number that differs from world to world. */
export interface VariedNumber {
  /** World by world. */
  readonly values: readonly number[];
  /** Standard deviation of the part of it that can be known over that of all of it, 0 to 1. */
  readonly knownShare: number;
}

/** How much each world says of another: a row a world, of weights that add up to 1; none on the world itself. */
export type Weights = readonly Float64Array[];

/** Worlds by how alike they are in some numbers. */
export interface WorldsAlike {
  /** Alike in the numbers themselves. */
  readonly whole: Weights;
  /**
   * By how likely a world is where the part that can be known is as drawn in another: that part makes up as many standard deviations as all of the
   * number does there.
   */
  readonly known: Weights;
}

/** How far apart worlds are still alike, in standard deviations of a number. */
export const ALIKE_WITHIN = 0.6;

/**
 * Weights of normal shape. Of a normal number of which a share can be known, the part that is known lies, where the whole is x standard
 * deviations off, about share·x of its own with a variance of 1 − share² (closed form of two normal numbers).
 */
export function worldsAlike(numbers: readonly VariedNumber[]): WorldsAlike {
  const count = numbers[0]?.values.length ?? 0;
  const standard = numbers.flatMap(({ values, knownShare }) => {
    const mean = meanSimple([...values]);
    const deviation = sampleStandardDeviation([...values]);
    if (!(deviation > 0)) return [];
    return [{ z: Float64Array.from(values, (value) => (value - mean) / deviation), knownShare }];
  });
  const whole = weights(
    count,
    standard.map(({ z }) => ({ z, knownShare: 1 })),
  );
  const isAllKnown = standard.every(({ knownShare }) => knownShare === 1);
  return { whole, known: isAllKnown ? whole : weights(count, standard) };
}

function weights(
  count: number,
  numbers: readonly { readonly z: Float64Array; readonly knownShare: number }[],
): Weights {
  return Array.from({ length: count }, (_, here) => {
    const off = new Float64Array(count);
    for (const { z, knownShare } of numbers) {
      const variance = 1 - knownShare ** 2 + ALIKE_WITHIN ** 2;
      for (let there = 0; there < count; there++)
        off[there] += (knownShare * z[there] - z[here]) ** 2 / variance;
    }
    off[here] = Number.POSITIVE_INFINITY;
    let nearest = Number.POSITIVE_INFINITY;
    for (let there = 0; there < count; there++) nearest = Math.min(nearest, off[there]);
    let sum = 0;
    for (let there = 0; there < count; there++) {
      off[there] = exp((nearest - off[there]) / 2); // a world far from all others has a neighbour, too
      sum += off[there];
    }
    for (let there = 0; there < count; there++) off[there] /= sum;
    return off;
  });
}
