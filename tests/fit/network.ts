import type { Tensor } from '../../src/regression/tensor.js';

/**
 * The fitted regression: a linear map of the standardised features, a quadratic one, and what tanh layers add.
 *
 *   z = (x − inputMean) inputRate,  h₀ = z,  hₖ = tanh(hₖ₋₁ Wₖ + bₖ)
 *   y = outputMean + outputScale (z L + c + (z A)² S + h_last V)
 *
 * The linear part is fitted first and alone is the plain multivariate regression. Squares of a few dozen learned sums make
 * every product that the answers depend on, at the price of two small matrix products.
 */
export interface Network {
  readonly inputMean: Tensor;
  /** One over the standard deviation. */
  readonly inputRate: Tensor;
  readonly outputMean: Tensor;
  readonly outputScale: Tensor;
  readonly hidden: readonly NetworkLayer[];
  readonly linear: NetworkLayer;
  readonly sums: Tensor;
  readonly squares: Tensor;
  readonly last: Tensor;
}

/** `weights` holds one row for each input. */
interface NetworkLayer {
  readonly weights: Tensor;
  readonly bias: Tensor;
}

/** What is learned, by the name it has in a graph, in a fixed order. */
export function parametersOf({ hidden, linear, sums, squares, last }: Network): Record<string, Tensor> {
  const layers = hidden.flatMap(({ weights, bias }, i): [string, Tensor][] => [
    [`weights-${i + 1}`, weights],
    [`bias-${i + 1}`, bias],
  ]);
  return {
    ...Object.fromEntries(layers),
    'linear-weights': linear.weights,
    'linear-bias': linear.bias,
    'sum-weights': sums,
    'square-weights': squares,
    'last-weights': last,
  };
}

/**
 * The network by plain arithmetic in doubles, one shot at a time: what the answers of the runtime and of the package's own
 * arithmetic are checked against.
 *
 * @param features  one shot's, as many as the network has inputs
 */
export function evaluatePlainly(network: Network, features: ArrayLike<number>): Float64Array {
  const { inputMean, inputRate, outputMean, outputScale, hidden, linear, sums, squares, last } = network;
  const z = Float64Array.from(inputMean.values, (mean, i) => (features[i] - mean) * inputRate.values[i]);
  let h = z;
  for (const { weights, bias } of hidden) h = product(h, weights, bias.values).map(Math.tanh);
  const direct = product(z, linear.weights, linear.bias.values);
  const sum = product(z, sums, new Float64Array(sums.dims[1]));
  const curved = product(
    sum.map((value) => value * value),
    squares,
    direct,
  );
  return product(h, last, curved).map((y, i) => outputMean.values[i] + outputScale.values[i] * y);
}

/** Row vector times matrix, plus a row. */
function product(row: Float64Array, { dims, values }: Tensor, plus: ArrayLike<number>): Float64Array {
  const [, columns] = dims;
  const out = Float64Array.from(plus);
  for (let i = 0; i < row.length; i++)
    for (let j = 0; j < columns; j++) out[j] += row[i] * values[columns * i + j];
  return out;
}
