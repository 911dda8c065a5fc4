import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { CARD_FILE, cardSchema, MODEL_FILE } from '../../src/regression/card.js';
import { BASIS, INPUT, OUTPUT, TUNING, TUNING_BIAS } from '../../src/regression/graph-names.js';
import { MODELS } from '../../src/regression/model-files.js';
import { readOnnx } from '../../src/regression/onnx-reader.js';
import { plainGraph } from '../../src/regression/plain-graph.js';
import { openGraph } from '../../src/regression/run-graph.js';
import type { Tensor } from '../../src/regression/tensor.js';
import { evaluatePlainly } from '../fit/network.js';
import { networkGraph } from '../fit/network-graph.js';
import { onnxFile } from '../fit/onnx.js';
import { takeRows } from '../fit/rows.js';
import { shotRows } from '../fit/shot-rows.js';
import { SMALL_BASIS, smallNetwork, smallRows } from '../support/regression-fixtures.js';

const SMALL = onnxFile(networkGraph(smallNetwork(), {}));

/** Numbers by a formula, as a tuning that moves every weight. */
const wave = (dims: readonly number[], height: number): Tensor => ({
  dims,
  values: Float32Array.from(
    { length: dims.reduce((a, b) => a * b, 1) },
    (_, i) => height * Math.sin(2.1 * i + 1),
  ),
});

const inputs = (features: Tensor, basis: number, answers: number, height: number) => ({
  [INPUT]: features,
  [TUNING]: wave([basis, answers], height),
  [TUNING_BIAS]: wave([answers], height),
});

/*
 * The runtime rounds every product and sum to 24 bits, 6e-8 of its size. A sum of some hundred terms of about one output scale
 * is off by a few times that by the square root of their number; five layers deep, and the tuning on top, 2e-5 is ample.
 */
const TOLERANCE = 2e-5;

test('the committed model, tuned: what the runtime answers for fresh shots, to the rounding of floats', async () => {
  const card = cardSchema.parse(JSON.parse(readFileSync(`${MODELS}${CARD_FILE}`, 'utf8')));
  const file = readFileSync(`${MODELS}${MODEL_FILE}`);
  const fresh = takeRows(shotRows(2003, 0, 12), () => true);
  expect(fresh.count).toBeGreaterThan(100);
  const features = { dims: [fresh.count, card.inputs.length], values: fresh.features };
  const given = inputs(features, card.fit.basis, card.outputs.length, 0.01);
  const runtime = await openGraph(file);
  const [wanted, found] = [await runtime.run(given), await plainGraph(file).run(given)];
  await runtime.close();
  expect(found[OUTPUT].length).toBe(wanted[OUTPUT].length);
  wanted[OUTPUT].forEach((value, i) => {
    const { name, scale } = card.outputs[i % card.outputs.length];
    expect(Math.abs(found[OUTPUT][i] - value) / scale, name).toBeLessThan(TOLERANCE);
  });
  expect(found[BASIS].length).toBe(wanted[BASIS].length);
  wanted[BASIS].forEach((value, i) => {
    expect(Math.abs(found[BASIS][i] - value)).toBeLessThan(TOLERANCE * Math.max(1, Math.abs(value)));
  });
});

// blocks of rows worked on together, ones that are not full, and a single row
test.each([1, 3, 4, 63, 64, 65, 130])('%i rows: each as the network’s formula gives it', async (count) => {
  const features = smallRows(count);
  const { [OUTPUT]: answers } = await plainGraph(SMALL).run(inputs(features, SMALL_BASIS, 2, 0));
  expect(answers.length).toBe(2 * count);
  for (let i = 0; i < count; i++)
    evaluatePlainly(smallNetwork(), features.values.subarray(3 * i, 3 * i + 3)).forEach((value, j) => {
      expect(answers[2 * i + j]).toBeCloseTo(value, 4); // rounded once, to a float
    });
});

test('readOnnx: every constant comes back bit for bit, and the operations in order', () => {
  const { operations, constants } = readOnnx(SMALL);
  const graph = networkGraph(smallNetwork(), {});
  expect(operations).toEqual(graph.nodes.map(({ op }) => op));
  expect([...constants.keys()].sort()).toEqual(Object.keys(graph.constants).sort());
  for (const [name, { dims, values }] of Object.entries(graph.constants))
    expect(constants.get(name)).toEqual({ dims, values });
});

test('a file cut short anywhere, another graph, or no ONNX file at all is refused, never answered from', () => {
  for (let length = 0; length < SMALL.length; length += 7)
    expect(() => plainGraph(SMALL.subarray(0, length)), String(length)).toThrow();
  const other = networkGraph(smallNetwork(), {});
  const nodes = other.nodes.map((node) => (node.op === 'Tanh' ? { ...node, op: 'Sigmoid' } : node));
  expect(() => plainGraph(onnxFile({ ...other, nodes }))).toThrow('other operations');
  expect(() => plainGraph(Buffer.from('not a model'))).toThrow();
});
