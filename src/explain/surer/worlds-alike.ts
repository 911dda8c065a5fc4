import { meanSimple, sampleStandardDeviation } from 'simple-statistics';
import { exp } from '../../math/exp.js';

/** One number that differs from world to world. */
export interface VariedNumber {
  /** World by world. */
  readonly values: readonly number[];
  /** Standard deviation of the part that can be known, over that of the whole number, 0 to 1. */
  readonly knownShare: number;
}

/** Weights of the other worlds for each world, one row for each; they add up to 1, and the world's own weight is 0. */
export type Weights = readonly Float64Array[];

/** Similarity of worlds in some numbers. */
export interface WorldsAlike {
  /** By the numbers themselves. */
  readonly whole: Weights;
  /**
   * By how likely each world is if the part that can be known has the value of another world, taken as many of its standard deviations off
   * as the whole number is there.
   */
  readonly known: Weights;
}

/** Width of the kernel, in standard deviations of a number (a choice of this project). */
export const ALIKE_WITHIN = 0.6;

/**
 * Weights by a normal kernel. If a share of a normal number can be known and the whole is x standard deviations off, the known part lies
 * share·x of its own standard deviations off, with a variance of 1 − share² (closed form of two normal numbers).
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
      off[there] = exp((nearest - off[there]) / 2); // relative to the nearest, so that a world far from all others keeps a neighbour
      sum += off[there];
    }
    for (let there = 0; there < count; there++) off[there] /= sum;
    return off;
  });
}
