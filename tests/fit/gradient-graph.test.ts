import { expect, test } from 'vitest';
import { openGraph } from '../../src/regression/run-graph.js';
import type { Tensor } from '../../src/regression/tensor.js';
import { smallNetwork } from '../support/regression-fixtures.js';
import { ANSWERS_IN, FEATURES_IN, gradientGraph, gradientOf, ONES_IN } from './gradient-graph.js';
import { evaluatePlainly, parametersOf } from './network.js';
import { onnxFile } from './onnx.js';

const SHOTS = 5;
const WEIGHTS = [1, 1.5];
const features: Tensor = {
  dims: [SHOTS, 3],
  values: Float32Array.from({ length: 3 * SHOTS }, (_, i) => Math.sin(2 * i)),
};
const answers: Tensor = {
  dims: [SHOTS, 2],
  values: Float32Array.from({ length: 2 * SHOTS }, (_, i) => Math.cos(i)),
};

/** The network with nothing standardised, so that it is what the gradient is of. */
const bareNetwork = () => ({
  ...smallNetwork(),
  inputMean: { dims: [3], values: new Float32Array(3) },
  inputRate: { dims: [3], values: new Float32Array(3).fill(1) },
  outputMean: { dims: [2], values: new Float32Array(2) },
  outputScale: { dims: [2], values: new Float32Array(2).fill(1) },
});

const loss = (network: ReturnType<typeof bareNetwork>): number => {
  let sum = 0;
  for (let i = 0; i < SHOTS; i++)
    evaluatePlainly(network, features.values.subarray(3 * i, 3 * i + 3)).forEach((y, j) => {
      sum += (WEIGHTS[j] * (y - answers.values[2 * i + j]) ** 2) / 2;
    });
  return sum;
};

test('the gradient graph, no error too far, gives what central differences of the plain arithmetic give', async () => {
  const network = bareNetwork();
  const parameters = parametersOf(network);
  const graph = await openGraph(onnxFile(gradientGraph(parameters, 1000, WEIGHTS)));
  const ones: Tensor = { dims: [1, SHOTS], values: new Float32Array(SHOTS).fill(1) };
  const gradients = await graph.run({
    ...parameters,
    [FEATURES_IN]: features,
    [ANSWERS_IN]: answers,
    [ONES_IN]: ones,
  });
  await graph.close();
  const step = 2 ** -7; // exact in floats near 1; the third derivative leaves 1e-4
  let checked = 0;
  for (const [name, { values }] of Object.entries(parameters))
    values.forEach((kept, i) => {
      values[i] = kept + step;
      const [up, upAt] = [loss(network), values[i]];
      values[i] = kept - step;
      const [down, downAt] = [loss(network), values[i]];
      values[i] = kept;
      expect(Math.abs(gradients[gradientOf(name)][i] - (up - down) / (upAt - downAt))).toBeLessThan(2e-3);
      checked++;
    });
  expect(checked).toBe(3 * 4 + 4 + 4 * 5 + 5 + 3 * 2 + 2 + 3 * 6 + 6 * 2 + 5 * 2);
});
