import type { Tensor } from '../../src/regression/tensor.js';
import { layerNodes } from './network-graph.js';
import type { OnnxGraph, OnnxNode } from './onnx.js';

/** What the gradient's graph takes besides the parameters: standardised features and answers, and a row of ones. */
export const FEATURES_IN = 'hidden-0';
export const ANSWERS_IN = 'answers';
export const ONES_IN = 'ones';

export const gradientOf = (parameter: string): string => `gradient-${parameter}`;

/**
 * Backpropagation as a graph, so that the runtime that answers with the network also fits it, an order of
 * magnitude faster than loops of our own would.
 *
 * Gives the gradient, summed over shots and answers, of half the squared error times the answer's weight, an error past
 * `farthest` counting linearly (Huber), by each parameter. `ones` has one entry a shot and sums over them.
 * Source: Goodfellow, Bengio & Courville, Deep Learning, 2016, ch. 6.5.
 *
 * @param parameters  of the network; only their shapes matter
 * @param farthest    in deviations of an answer
 * @param weights     one an answer
 */
export function gradientGraph(
  parameters: Readonly<Record<string, Tensor>>,
  farthest: number,
  weights: readonly number[],
): OnnxGraph {
  const count = Object.keys(parameters).filter((name) => name.startsWith('bias-')).length;
  const [features, answers] = parameters['linear-weights'].dims;
  const shapes = Object.entries(parameters).map(([name, { dims }]) => [name, dims] as const);
  return {
    name: 'flarewise-gradient',
    inputs: {
      [FEATURES_IN]: ['shots', features],
      [ANSWERS_IN]: ['shots', answers],
      [ONES_IN]: [1, 'shots'],
      ...Object.fromEntries(shapes),
    },
    outputs: Object.fromEntries(
      shapes.map(([name, dims]) => [gradientOf(name), name.includes('bias') ? [1, ...dims] : dims]),
    ),
    constants: {
      one: { dims: [1], values: Float32Array.of(1) },
      two: { dims: [1], values: Float32Array.of(2) },
      least: { dims: [], values: Float32Array.of(-farthest) },
      most: { dims: [], values: Float32Array.of(farthest) },
      importance: { dims: [answers], values: Float32Array.from(weights) },
    },
    nodes: [
      ...layerNodes(count),
      { op: 'Sub', inputs: ['standardised', ANSWERS_IN], outputs: ['miss'] },
      { op: 'Clip', inputs: ['miss', 'least', 'most'], outputs: ['limited'] },
      { op: 'Mul', inputs: ['limited', 'importance'], outputs: ['error'] },
      weightGradient(`hidden-${count}`, 'error', 'last-weights'),
      weightGradient(FEATURES_IN, 'error', 'linear-weights'),
      biasGradient('error', 'linear-bias'),
      weightGradient('squares', 'error', 'square-weights'),
      {
        op: 'Gemm',
        inputs: ['error', 'square-weights'],
        outputs: ['behind-squares'],
        integers: { transB: 1 },
      },
      { op: 'Mul', inputs: ['sums', 'two'], outputs: ['slope-squares'] },
      { op: 'Mul', inputs: ['behind-squares', 'slope-squares'], outputs: ['error-squares'] },
      weightGradient(FEATURES_IN, 'error-squares', 'sum-weights'),
      ...Array.from({ length: count }, (_, i) => throughLayer(count - i, i === 0)).flat(),
    ],
    notes: {},
  };
}

/** Takes the error back through a layer: to its sums, then to its weights and bias. */
function throughLayer(layer: number, isLast: boolean): readonly OnnxNode[] {
  const from = isLast ? 'error' : `error-${layer + 1}`;
  const weights = isLast ? 'last-weights' : `weights-${layer + 1}`;
  const hidden = `hidden-${layer}`;
  const error = `error-${layer}`;
  return [
    { op: 'Gemm', inputs: [from, weights], outputs: [`behind-${layer}`], integers: { transB: 1 } },
    { op: 'Mul', inputs: [hidden, hidden], outputs: [`square-${layer}`] },
    { op: 'Sub', inputs: ['one', `square-${layer}`], outputs: [`slope-${layer}`] },
    { op: 'Mul', inputs: [`behind-${layer}`, `slope-${layer}`], outputs: [error] },
    weightGradient(`hidden-${layer - 1}`, error, `weights-${layer}`),
    biasGradient(error, `bias-${layer}`),
  ];
}

const weightGradient = (into: string, error: string, weights: string): OnnxNode => ({
  op: 'Gemm',
  inputs: [into, error],
  outputs: [gradientOf(weights)],
  integers: { transA: 1 },
});

const biasGradient = (error: string, bias: string): OnnxNode => ({
  op: 'MatMul',
  inputs: [ONES_IN, error],
  outputs: [gradientOf(bias)],
});
