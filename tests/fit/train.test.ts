import { expect, test } from 'vitest';
import { evaluatePlainly, parametersOf } from './network.js';
import { spreadOf } from './standardise.js';
import { startNetwork } from './start-network.js';
import { train } from './train.js';

const COUNT = 1024;

/** Three features, evenly spread over −√3 to √3 (mean 0, deviation 1). */
const features = Float32Array.from({ length: 3 * COUNT }, (_, i) => {
  const root = [Math.SQRT2, Math.sqrt(3), Math.sqrt(5)][i % 3];
  return Math.sqrt(3) * (2 * (((Math.floor(i / 3) + 1) * root) % 1) - 1);
});

/** A product, which squares of sums make exactly, and a bend, which the layers must learn. */
const wanted = ([a, b, c]: ArrayLike<number> & Iterable<number>): number[] => [
  a * b,
  Math.tanh(2 * c) + a / 2,
];

const answers = Float32Array.from(
  Array.from({ length: COUNT }, (_, i) => wanted(features.subarray(3 * i, 3 * i + 3))).flat(),
);

test('train: learns a product and a bend that no linear fit can give', async () => {
  const inputs = spreadOf(features, 3);
  const unit = {
    mean: { dims: [2], values: new Float32Array(2) },
    deviation: { dims: [2], values: Float32Array.of(1, 1) },
  };
  const linear = { dims: [3, 2], values: new Float32Array(6) };
  const network = startNetwork(inputs, unit, linear, [8], 4, 1);
  const error = (j: number): number => {
    let sum = 0;
    for (let i = 0; i < COUNT; i++) {
      const row = features.subarray(3 * i, 3 * i + 3);
      sum += (evaluatePlainly(network, row)[j] - wanted(row)[j]) ** 2 / COUNT;
    }
    return Math.sqrt(sum);
  };
  expect(error(0)).toBeCloseTo(1, 1); // of a product of two independent numbers of deviation 1
  const rows = { count: COUNT, features, answers };
  await train(parametersOf(network), rows, { epochs: 150, batch: 64, rate: 0.02, weights: [1, 1], seed: 1 });
  expect(error(0)).toBeLessThan(0.03);
  expect(error(1)).toBeLessThan(0.03);
});
