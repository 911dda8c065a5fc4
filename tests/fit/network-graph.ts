import { BASIS, INPUT, OUTPUT, TUNING, TUNING_BIAS } from '../../src/regression/graph-names.js';
import type { Tensor } from '../../src/regression/tensor.js';
import type { Network } from './network.js';
import { parametersOf } from './network.js';
import type { OnnxGraph, OnnxNode } from './onnx.js';

/**
 * The fitted regression as a graph: one row a shot, raw features in, reaction numbers (SI) out.
 *
 * Answers are linear in a `basis`: standardised features, squares, and the last layer. `tuning` is added to the weights that
 * map it to the answers, `tuning-bias` to what comes out (both in output scales); zeros leave the model as fitted.
 */
export function networkGraph(network: Network, notes: Readonly<Record<string, string>>): OnnxGraph {
  const { inputMean, inputRate, outputMean, outputScale, hidden, linear, sums, squares, last } = network;
  const layers = Object.entries(parametersOf(network)).filter(([name]) => /^(weights|bias)-/.test(name));
  const weights = stacked([linear.weights, squares, last]);
  return {
    name: 'flarewise-reaction',
    inputs: {
      [INPUT]: ['shots', inputMean.values.length],
      [TUNING]: weights.dims,
      [TUNING_BIAS]: linear.bias.dims,
    },
    outputs: { [OUTPUT]: ['shots', outputMean.values.length], [BASIS]: ['shots', weights.dims[0]] },
    constants: {
      'input-mean': inputMean,
      'input-rate': inputRate,
      ...Object.fromEntries(layers),
      'sum-weights': sums,
      'answer-weights': weights,
      'answer-bias': linear.bias,
      'output-mean': outputMean,
      'output-scale': outputScale,
    },
    nodes: [
      { op: 'Sub', inputs: [INPUT, 'input-mean'], outputs: ['centred'] },
      { op: 'Mul', inputs: ['centred', 'input-rate'], outputs: ['hidden-0'] },
      ...hiddenNodes(hidden.length),
      ...squareNodes,
      {
        op: 'Concat',
        inputs: ['hidden-0', 'squares', `hidden-${hidden.length}`],
        outputs: [BASIS],
        integers: { axis: 1 },
      },
      { op: 'Add', inputs: ['answer-weights', TUNING], outputs: ['tuned-weights'] },
      { op: 'Add', inputs: ['answer-bias', TUNING_BIAS], outputs: ['tuned-bias'] },
      { op: 'Gemm', inputs: [BASIS, 'tuned-weights', 'tuned-bias'], outputs: ['standardised'] },
      { op: 'Mul', inputs: ['standardised', 'output-scale'], outputs: ['scaled'] },
      { op: 'Add', inputs: ['scaled', 'output-mean'], outputs: [OUTPUT] },
    ],
    notes,
  };
}

/** Matrices of as many columns, one below the other. */
const stacked = (parts: readonly Tensor[]): Tensor => ({
  dims: [parts.reduce((rows, { dims }) => rows + dims[0], 0), parts[0].dims[1]],
  values: Float32Array.from(parts.flatMap(({ values }) => [...values])),
});

const hiddenNodes = (count: number): readonly OnnxNode[] =>
  Array.from({ length: count }, (_, i): OnnxNode[] => [
    {
      op: 'Gemm',
      inputs: [`hidden-${i}`, `weights-${i + 1}`, `bias-${i + 1}`],
      outputs: [`sum-${i + 1}`],
    },
    { op: 'Tanh', inputs: [`sum-${i + 1}`], outputs: [`hidden-${i + 1}`] },
  ]).flat();

const squareNodes: readonly OnnxNode[] = [
  { op: 'MatMul', inputs: ['hidden-0', 'sum-weights'], outputs: ['sums'] },
  { op: 'Mul', inputs: ['sums', 'sums'], outputs: ['squares'] },
];

/** The same with every parameter apart, for fitting: from `hidden-0` to the `standardised` answers. */
export const layerNodes = (count: number): readonly OnnxNode[] => [
  ...hiddenNodes(count),
  ...squareNodes,
  { op: 'Gemm', inputs: ['hidden-0', 'linear-weights', 'linear-bias'], outputs: ['direct'] },
  { op: 'Gemm', inputs: ['squares', 'square-weights', 'direct'], outputs: ['curved'] },
  { op: 'Gemm', inputs: [`hidden-${count}`, 'last-weights', 'curved'], outputs: ['standardised'] },
];
