import { BASIS, INPUT, OUTPUT, TUNING, TUNING_BIAS } from './graph-names.js';
import { openGraph } from './score.js';
import type { Tensor } from './tensor.js';

/** What is added to a model's last weights and bias, in output scales. */
export interface Tuning {
  readonly weights: Tensor;
  readonly bias: Tensor;
}

/** The fitted regression, ready to answer for rows of features. */
export interface ReactionModel {
  /** Reaction numbers (SI), one row of `TARGETS` a row of features. */
  answer(features: Tensor, tuning?: Tuning): Promise<Float32Array>;
  /** Those of the model as fitted, and what they are linear in. */
  basis(features: Tensor): Promise<{ reaction: Float32Array; basis: Tensor }>;
  close(): Promise<void>;
}

/**
 * Opens a model's file.
 *
 * @param width  numbers in a row of the basis: `basisWidth` of its card
 * @param depth  answers
 * @throws whatever the runtime throws when it is missing or refuses the file
 */
export async function openModel(file: Uint8Array, width: number, depth: number): Promise<ReactionModel> {
  const graph = await openGraph(file);
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
