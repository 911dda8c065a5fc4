import { describe, expect, test } from 'vitest';
import { bayesFactor } from '../../src/learn/belief-evidence.js';
import { BELIEFS } from '../../src/records/shared/beliefs.js';
import { beliefChance } from '../../src/simulate/worlds/belief-chance.js';

describe('bayesFactor', () => {
  /** One reading of deviation s that a belief in full size moves by m: the ratio of densities, worked out by its definition. */
  const byDefinition = (least: number, most: number, read: number, s: number): number => {
    const density = (middle: number): number => Math.exp(-((read - middle) ** 2) / (2 * s * s));
    const sizes = Array.from({ length: 20_000 }, (_, k) => least + ((most - least) * (k + 0.5)) / 20_000);
    return sizes.reduce((sum, size) => sum + density(size), 0) / sizes.length / density(0);
  };

  test.each([
    [0, 2.2, 1.5, 0.8],
    [0, 2.2, -1, 0.8],
    [0, -2.2, -1.6, 0.5],
    [0.5, 2, 0.1, 1],
  ])('sizes from %d to %d, read %d ± %d: the mean ratio of densities', (least, most, read, s) => {
    const [gain, information] = [(most * read) / s ** 2, (most / s) ** 2];
    expect(bayesFactor({ least, most }, gain, information) / byDefinition(least, most, read, s)).toBeCloseTo(
      1,
      2,
    );
  });
});

describe('beliefChance', () => {
  const [belief] = BELIEFS;
  test('even odds and a factor of four are four to one', () => {
    expect(beliefChance(0.5, { beliefFactors: { [belief.id]: 4 } })(belief)).toBeCloseTo(0.8, 12);
  });

  test('without a log, and for what a log is silent about, the weight itself', () => {
    expect(beliefChance(0.3)(belief)).toBe(0.3);
    expect(beliefChance(0.3, { beliefFactors: {} })(belief)).toBe(0.3);
  });

  test('what is sure either way stays so', () => {
    for (const sure of [0, 1])
      expect(beliefChance(sure, { beliefFactors: { [belief.id]: 7 } })(belief)).toBe(sure);
  });
});
