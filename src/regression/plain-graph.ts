import { tanh } from '../math/exp.js';
import { type Affine, affine, TOGETHER, writeAffine } from './affine.js';
import { BASIS, INPUT, OUTPUT, TUNING, TUNING_BIAS } from './graph-names.js';
import { type OnnxContent, readOnnx } from './onnx-reader.js';
import type { RunningGraph } from './run-graph.js';
import type { Tensor } from './tensor.js';

/** Rows evaluated at a time: they and their layers stay in the processor's cache. */
const BLOCK = 64;

/**
 * The fitted regression's graph by plain arithmetic, for machines without the ONNX runtime.
 *
 * Sums are in doubles, in the same order everywhere; the runtime sums in 32-bit floats, so the two differ by its rounding.
 *
 * @throws {Error} when the file is no ONNX file, or its graph is another than the one the fitting tools write
 */
export function plainGraph(file: Uint8Array): RunningGraph {
  const network = networkIn(readOnnx(file));
  return {
    run: async (inputs) => {
      const { [INPUT]: features, [TUNING]: tuning, [TUNING_BIAS]: tuningBias } = inputs;
      return evaluate(network, features, affine(sum(network.weights, tuning), sum(network.bias, tuningBias)));
    },
    close: async () => {},
  };
}

/** The parameters of the graph; `weights` and `bias` map the basis to the answers. */
interface Network {
  readonly inputMean: Float32Array;
  readonly inputRate: Float32Array;
  readonly hidden: readonly Affine[];
  readonly sums: Affine;
  readonly weights: Tensor;
  readonly bias: Tensor;
  readonly outputMean: Float32Array;
  readonly outputScale: Float32Array;
}

function networkIn({ operations, constants }: OnnxContent): Network {
  const get = (name: string): Tensor => {
    const found = constants.get(name);
    if (found === undefined) throw new Error(`the graph has no ${name}`);
    return found;
  };
  const layers = operations.filter((operation) => operation === 'Tanh').length;
  if (operations.join() !== operationsOf(layers).join()) throw new Error('the graph has other operations');
  return {
    inputMean: get('input-mean').values,
    inputRate: get('input-rate').values,
    hidden: Array.from({ length: layers }, (_, i) => affine(get(`weights-${i + 1}`), get(`bias-${i + 1}`))),
    sums: affine(get('sum-weights')),
    weights: get('answer-weights'),
    bias: get('answer-bias'),
    outputMean: get('output-mean').values,
    outputScale: get('output-scale').values,
  };
}

/** Standardised, through the layers, squared sums, all joined; tuned, answered, in SI again. */
const operationsOf = (layers: number): readonly string[] => [
  ...['Sub', 'Mul'],
  ...Array.from({ length: layers }, () => ['Gemm', 'Tanh']).flat(),
  ...['MatMul', 'Mul', 'Concat'],
  ...['Add', 'Add', 'Gemm', 'Mul', 'Add'],
];

const sum = (a: Tensor, b: Tensor): Tensor => ({
  dims: a.dims,
  values: a.values.map((value, i) => value + b.values[i]),
});

function evaluate(
  { inputMean, inputRate, hidden, sums, outputMean, outputScale }: Network,
  features: Tensor,
  answers: Affine,
): Readonly<Record<string, Float32Array>> {
  const [count] = features.dims;
  const [width, depth] = [answers.inner, answers.columns];
  const all = { [OUTPUT]: new Float32Array(depth * count), [BASIS]: new Float32Array(width * count) };
  const z = new Float64Array(BLOCK * sums.inner);
  const layers = hidden.map(({ columns }) => new Float64Array(BLOCK * columns));
  const squares = new Float64Array(BLOCK * sums.columns);
  const basis = new Float64Array(BLOCK * width);
  const out = new Float64Array(BLOCK * depth);
  for (let from = 0; from < count; from += BLOCK) {
    const rows = Math.min(BLOCK, count - from);
    const padded = TOGETHER * Math.ceil(rows / TOGETHER); // rows past the last are computed and ignored
    writeStandardised(z, features.values.subarray(sums.inner * from), rows, inputMean, inputRate);
    hidden.forEach((layer, i) => {
      writeAffine(layers[i], i === 0 ? z : layers[i - 1], padded, layer);
      for (let k = 0; k < rows * layer.columns; k++) layers[i][k] = tanh(layers[i][k]);
    });
    writeAffine(squares, z, padded, sums);
    for (let k = 0; k < rows * sums.columns; k++) squares[k] *= squares[k];
    writeJoined(basis, [z, squares, layers[layers.length - 1]], rows, width);
    writeAffine(out, basis, padded, answers);
    for (let k = 0; k < rows * depth; k++)
      all[OUTPUT][depth * from + k] = outputMean[k % depth] + outputScale[k % depth] * out[k];
    all[BASIS].set(basis.subarray(0, width * rows), width * from);
  }
  return all;
}

function writeStandardised(
  out: Float64Array,
  features: Float32Array,
  rows: number,
  mean: Float32Array,
  rate: Float32Array,
): void {
  const width = mean.length;
  for (let i = 0; i < rows; i++)
    for (let j = 0; j < width; j++) out[width * i + j] = (features[width * i + j] - mean[j]) * rate[j];
}

/** Joins blocks with the same number of rows side by side. */
function writeJoined(out: Float64Array, parts: readonly Float64Array[], rows: number, width: number): void {
  let column = 0;
  for (const part of parts) {
    const columns = part.length / BLOCK;
    for (let i = 0; i < rows; i++)
      for (let j = 0; j < columns; j++) out[width * i + column + j] = part[columns * i + j];
    column += columns;
  }
}
