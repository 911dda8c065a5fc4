import { cumulativeStdNormalProbability, mean, sampleStandardDeviation } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { valueOfKnowing } from '../../../src/explain/surer/value-of-knowing.js';
import { worldsAlike } from '../../../src/explain/surer/worlds-alike.js';
import { normalNumbers } from '../../support/normal-numbers.js';

/** Two choices whose difference is −behind + slope·x + noise, x and noise standard normal. */
function twoChoices(seed: number, count: number, { behind = 0, slope = 0, noise = 0 }) {
  const draw = normalNumbers(seed);
  const x = draw(count);
  const e = draw(count);
  return { x, difference: Float64Array.from(x, (each, i) => -behind + slope * each + noise * e[i]) };
}

const density = (z: number): number => Math.exp(-(z ** 2) / 2) / Math.sqrt(2 * Math.PI);

/** Unit normal loss integral: E max(0, z − u) of a standard normal z (Raiffa & Schlaifer, Applied Statistical Decision Theory, 1961, §5.13). */
const normalLoss = (u: number): number => density(u) - u * cumulativeStdNormalProbability(-u);

const MANY = 2000;

describe('valueOfKnowing: two choices, linear and normal, against the closed form', () => {
  test.each([
    { behind: 0, slope: 4, noise: 3, knownShare: 1 },
    { behind: 2, slope: 4, noise: 3, knownShare: 1 },
    { behind: 6, slope: 4, noise: 0, knownShare: 1 },
    { behind: 1, slope: 4, noise: 3, knownShare: 0.6 },
  ])('behind $behind, slope $slope, noise $noise, known share $knownShare', ({ knownShare, ...made }) => {
    const { x, difference } = twoChoices(11, MANY, made);
    const { gain, chance } = valueOfKnowing(worldsAlike([{ values: x, knownShare }]), [difference], 0.5);
    const spread = made.slope * knownShare;
    const wanted = spread * normalLoss(made.behind / spread);
    // four standard errors: of the mean of the differences, and of the mean over draws of what is known
    const error = (4 * Math.hypot(sampleStandardDeviation([...difference]), spread)) / Math.sqrt(MANY);
    expect(Math.abs(gain - wanted)).toBeLessThan(error);
    const often = cumulativeStdNormalProbability(-(made.behind + 0.5) / spread);
    expect(Math.abs(chance - often)).toBeLessThan(
      (4 * (Math.sqrt(often * (1 - often)) + 0.5)) / Math.sqrt(MANY),
    );
  });

  test('over as few worlds as an answer has it is not too much on the mean, and not much too little', () => {
    const made = { behind: 2, slope: 4, noise: 5 };
    const gains = Array.from({ length: 100 }, (_, seed) => {
      const { x, difference } = twoChoices(100 + seed, 128, made);
      return valueOfKnowing(worldsAlike([{ values: x, knownShare: 1 }]), [difference], 0.5).gain;
    });
    const wanted = made.slope * normalLoss(made.behind / made.slope);
    const error = (3 * sampleStandardDeviation(gains)) / Math.sqrt(gains.length);
    expect(mean(gains)).toBeLessThan(wanted + error);
    expect(mean(gains)).toBeGreaterThan(0.85 * wanted - error);
  });
});

describe('valueOfKnowing: what has to do with nothing', () => {
  const RUNS = 300;
  /** Twelve choices about as good as the first, worlds an answer has, and numbers that have nothing to do with them. */
  const runs = Array.from({ length: RUNS }, (_, seed) => {
    const draw = normalNumbers(1000 + seed);
    const luck = draw(128);
    const differences = Array.from({ length: 12 }, (_, c) => {
      const own = draw(128);
      return Float64Array.from(luck, (each, i) => -0.2 * c + 3 * each + 4 * own[i]);
    });
    const numbers = Array.from({ length: 1 + (seed % 3) }, () => ({ values: draw(128), knownShare: 1 }));
    return valueOfKnowing(worldsAlike(numbers), differences, 0.5);
  });

  test('is worth nothing in nearly all runs', () => {
    const shown = runs.filter(({ chance }) => chance >= 0.05).length;
    expect(shown / RUNS).toBeLessThan(0.04);
    expect(mean(runs.map(({ gain }) => gain))).toBeLessThan(0.03);
    expect(mean(runs.map(({ chance }) => chance))).toBeLessThan(0.01);
  });

  test('is worth nothing once its values are dealt out anew among the worlds, whatever it was worth before', () => {
    const { x, difference } = twoChoices(31, 128, { behind: 1, slope: 4, noise: 4 });
    const worthOf = (values: readonly number[]) =>
      valueOfKnowing(worldsAlike([{ values, knownShare: 1 }]), [difference], 0.5);
    expect(worthOf(x).chance).toBeGreaterThan(0.2);
    const dealt = Array.from({ length: 200 }, (_, n) => {
      const keys = normalNumbers(500 + n)(x.length);
      const order = x.map((_, i) => i).sort((a, b) => keys[a] - keys[b]);
      return worthOf(order.map((i) => x[i]));
    });
    expect(dealt.filter(({ chance }) => chance >= 0.05).length / dealt.length).toBeLessThan(0.04);
    expect(mean(dealt.map(({ gain }) => gain))).toBeLessThan(0.02 * worthOf(x).gain);
  });

  test('no trust is nothing gained, whatever the fit', () => {
    for (const { trust, gain, chance, chosen } of runs)
      if (trust === 0)
        expect({ gain, chance, stays: chosen.every((c) => c === -1) }).toEqual({
          gain: 0,
          chance: 0,
          stays: true,
        });
  });
});

test('valueOfKnowing: where a choice is never better, whatever is known, nothing is gained, however bent its difference', () => {
  const { x, difference: luck } = twoChoices(21, 512, { noise: 1 });
  const levelsOff = Float64Array.from(x, (z, i) => -0.1 - 5 * Math.max(0, z - 0.5) + luck[i]);
  const { gain, chance, trust } = valueOfKnowing(
    worldsAlike([{ values: x, knownShare: 1 }]),
    [levelsOff],
    0.5,
  );
  expect(trust).toBeGreaterThan(1); // the fit is good: it is seen that nothing is gained
  expect(gain).toBeLessThan(0.15); // at most what luck leaves in a local mean of a hundred worlds
  expect(chance).toBeLessThan(0.02);
});

test('valueOfKnowing: of no other choice is nothing', () => {
  const alike = worldsAlike([{ values: [1, 2, 3, 4], knownShare: 1 }]);
  expect(valueOfKnowing(alike, [], 0.5)).toEqual({
    chance: 0,
    gain: 0,
    chosen: [-1, -1, -1, -1],
    trust: 0,
  });
});
