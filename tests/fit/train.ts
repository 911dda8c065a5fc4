import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { openGraph } from '../../src/regression/run-graph.js';
import type { Tensor } from '../../src/regression/tensor.js';
import { ANSWERS_IN, FEATURES_IN, gradientGraph, gradientOf, ONES_IN } from './gradient-graph.js';
import { onnxFile } from './onnx.js';

/** Rows of standardised features and answers. */
interface TrainingRows {
  readonly count: number;
  readonly features: Float32Array;
  readonly answers: Float32Array;
}

interface Training {
  readonly epochs: number;
  readonly batch: number;
  /** Greatest step of a parameter; it rises at first and then falls to nothing along a cosine. */
  readonly rate: number;
  /** How much the error of each answer counts, in its deviations. */
  readonly weights: readonly number[];
  readonly seed: number;
}

/** Adam's usual memory of gradients and of their squares. Source: Kingma & Ba, ICLR 2015, algorithm 1. */
const MEMORY = 0.9;
const MEMORY_OF_SQUARES = 0.999;
const SMALLEST = 1e-8;

/**
 * Error, in deviations of an answer, past which it counts linearly: the few shots that hardly hook or hardly roll out
 * err most, and must not be all that the fit works on. Source: Huber, Ann. Math. Statist. 35, 73, 1964.
 */
const FARTHEST = 0.3;

/** Share of the steps over which the rate rises. */
const WARM_UP = 0.02;

/**
 * Fits parameters by stochastic gradient descent (Adam), in place.
 *
 * The same seed, rows and processor give the same parameters, bit for bit; another processor may sum in
 * another order. Source of the schedule: Loshchilov & Hutter, ICLR 2017 (cosine annealing, from memory).
 *
 * @param parameters  where the descent starts; changed
 * @param onEpoch     told after each pass over the rows
 */
export async function train(
  parameters: Readonly<Record<string, Tensor>>,
  rows: TrainingRows,
  { epochs, batch, rate, weights, seed }: Training,
  onEpoch: (done: number) => void = () => {},
): Promise<void> {
  const graph = await openGraph(onnxFile(gradientGraph(parameters, FARTHEST, weights)));
  const moments = Object.entries(parameters).map(([name, { values }]) => ({
    name,
    values,
    first: new Float64Array(values.length),
    second: new Float64Array(values.length),
  }));
  const ones: Tensor = { dims: [1, batch], values: new Float32Array(batch).fill(1) };
  const width = rows.features.length / rows.count;
  const depth = rows.answers.length / rows.count;
  const features: Tensor = { dims: [batch, width], values: new Float32Array(batch * width) };
  const answers: Tensor = { dims: [batch, depth], values: new Float32Array(batch * depth) };
  const order = Uint32Array.from({ length: rows.count }, (_, i) => i);
  const shuffle = shuffler(seed);
  const perEpoch = Math.floor(rows.count / batch);
  const steps = epochs * perEpoch;
  let step = 0;
  for (let epoch = 0; epoch < epochs; epoch++) {
    shuffle(order);
    for (let part = 0; part < perEpoch; part++) {
      gatherRows(features.values, rows.features, width, order, part * batch, batch);
      gatherRows(answers.values, rows.answers, depth, order, part * batch, batch);
      const gradients = await graph.run({
        ...parameters,
        [FEATURES_IN]: features,
        [ANSWERS_IN]: answers,
        [ONES_IN]: ones,
      });
      step++;
      const progress = step / steps;
      const now = rate * Math.min(1, progress / WARM_UP) * 0.5 * (1 + Math.cos(Math.PI * progress));
      const unbiased = now / (1 - MEMORY ** step);
      const unbiasedSquare = 1 / (1 - MEMORY_OF_SQUARES ** step);
      for (const { name, values, first, second } of moments) {
        const gradient = gradients[gradientOf(name)];
        for (let i = 0; i < values.length; i++) {
          const g = gradient[i] / batch;
          first[i] += (1 - MEMORY) * (g - first[i]);
          second[i] += (1 - MEMORY_OF_SQUARES) * (g * g - second[i]);
          values[i] -= (unbiased * first[i]) / (Math.sqrt(unbiasedSquare * second[i]) + SMALLEST);
        }
      }
    }
    onEpoch(epoch + 1);
  }
  await graph.close();
}

/** Copies the rows `order[from]`, `order[from + 1]` … one after the other. */
function gatherRows(
  out: Float32Array,
  rows: Float32Array,
  width: number,
  order: Uint32Array,
  from: number,
  count: number,
): void {
  for (let k = 0; k < count; k++) {
    const at = width * order[from + k];
    for (let i = 0; i < width; i++) out[k * width + i] = rows[at + i];
  }
}

/** Fisher and Yates' shuffle, in place, from one seeded stream. */
function shuffler(seed: number): (order: Uint32Array) => void {
  const generator = xoroshiro128plus(seed);
  for (let i = 0; i < 16; i++) generator.next(); // the first draws of near seeds resemble each other
  return (order) => {
    for (let i = order.length - 1; i > 0; i--) {
      const j = Math.floor(uniformFloat64(generator) * (i + 1));
      const kept = order[i];
      order[i] = order[j];
      order[j] = kept;
    }
  };
}
