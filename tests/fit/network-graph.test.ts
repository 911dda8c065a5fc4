import { expect, test } from 'vitest';
import { openModel } from '../../src/regression/reaction-model.js';
import { openGraph } from '../../src/regression/run-graph.js';
import { SMALL_BASIS, smallNetwork, smallRows } from '../support/regression-fixtures.js';
import { evaluatePlainly } from './network.js';
import { networkGraph } from './network-graph.js';
import { onnxFile } from './onnx.js';

test('the runtime gives what plain arithmetic in doubles gives, to the rounding of floats', async () => {
  const network = smallNetwork();
  const rows = smallRows(64);
  const model = await openModel(onnxFile(networkGraph(network, {})), SMALL_BASIS, 2);
  const answers = await model.answer(rows);
  await model.close();
  expect(answers.length).toBe(2 * 64);
  for (let i = 0; i < 64; i++) {
    const plain = evaluatePlainly(network, rows.values.subarray(3 * i, 3 * i + 3));
    plain.forEach((value, j) => {
      // roundings of relative size 6e-8 on squares of a few hundred output scales
      const tolerance = 1e-4 * network.outputScale.values[j];
      expect(Math.abs(answers[2 * i + j] - value)).toBeLessThan(tolerance);
    });
  }
});

test('a damaged file is refused with an error, not with numbers', async () => {
  const file = onnxFile(networkGraph(smallNetwork(), {})).slice(0, 400);
  await expect(openGraph(file)).rejects.toThrow();
});
