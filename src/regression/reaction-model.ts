import { BASIS, INPUT, OUTPUT, TUNING, TUNING_BIAS } from './graph-names.js';
import { plainGraph } from './plain-graph.js';
import { openGraph, type RunningGraph } from './run-graph.js';
import type { Tensor } from './tensor.js';

/** What is added to a model's last weights and bias, in output scales. */
export interface Tuning {
  readonly weights: Tensor;
  readonly bias: Tensor;
}

/** How a model's answers are computed; the two agree to the rounding of 32-bit floats. */
export type Arithmetic = 'runtime' | 'plain';

/** The fitted regression, ready to answer for rows of features. */
export interface ReactionModel {
  /** The ONNX runtime, or plain arithmetic, which takes longer. */
  readonly arithmetic: Arithmetic;
  /** Reaction numbers (SI): for each row of features a row in the order of `TARGETS`. */
  answer(features: Tensor, tuning?: Tuning): Promise<Float32Array>;
  /** Reaction numbers of the model as fitted, and the basis that they are linear in. */
  basis(features: Tensor): Promise<{ reaction: Float32Array; basis: Tensor }>;
  close(): Promise<void>;
}

/**
 * Opens a model's file: in the ONNX runtime, or in plain arithmetic where that is missing or does not load on this machine.
 *
 * @param width  numbers in a row of the basis: `fit.basis` of its card
 * @param depth  answers
 * @throws {Error} when the file cannot be read
 */
export async function openModel(file: Uint8Array, width: number, depth: number): Promise<ReactionModel> {
  const { arithmetic, graph } = await openAnyhow(file);
  const untuned: Tuning = {
    weights: { dims: [width, depth], values: new Float32Array(width * depth) },
    bias: { dims: [depth], values: new Float32Array(depth) },
  };
  const inputs = (features: Tensor, { weights, bias }: Tuning): Record<string, Tensor> => ({
    [INPUT]: features,
    [TUNING]: weights,
    [TUNING_BIAS]: bias,
  });
  return {
    arithmetic,
    answer: async (features, tuning = untuned) =>
      (await graph.run(inputs(features, tuning), [OUTPUT]))[OUTPUT],
    async basis(features) {
      const answers = await graph.run(inputs(features, untuned));
      return {
        reaction: answers[OUTPUT],
        basis: { dims: [features.dims[0], width], values: answers[BASIS] },
      };
    },
    close: graph.close,
  };
}

async function openAnyhow(file: Uint8Array): Promise<{ arithmetic: Arithmetic; graph: RunningGraph }> {
  try {
    return { arithmetic: 'runtime', graph: await openGraph(file) };
  } catch {
    return { arithmetic: 'plain', graph: plainGraph(file) };
  }
}
