import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { probit } from 'simple-statistics';
import type { Tensor } from '../../src/regression/tensor.js';
import type { Network } from './network.js';
import type { Spread } from './standardise.js';

/**
 * The network that a fit starts from: its linear part as fitted, its layers drawn at random (normal, of
 * deviation 1/√inputs, so that sums neither die out nor saturate), and nothing yet added by them.
 * Source: LeCun et al., Efficient BackProp, 1998, §4.6.
 */
export function startNetwork(
  inputs: Spread,
  outputs: Spread,
  linear: Tensor,
  widths: readonly number[],
  sumCount: number,
  seed: number,
): Network {
  const generator = xoroshiro128plus(seed);
  for (let i = 0; i < 16; i++) generator.next(); // the first draws of near seeds resemble each other
  const normal = (): number => probit(Math.min(0.9999, Math.max(0.0001, uniformFloat64(generator))));
  const [features, answers] = linear.dims;
  const drawn = (before: number, width: number): Tensor => ({
    dims: [before, width],
    values: Float32Array.from({ length: before * width }, () => normal() / Math.sqrt(before)),
  });
  const hidden = widths.map((width, i) => {
    return {
      weights: drawn(i === 0 ? features : widths[i - 1], width),
      bias: { dims: [width], values: new Float32Array(width) },
    };
  });
  const last = widths[widths.length - 1];
  return {
    inputMean: inputs.mean,
    inputRate: { dims: [features], values: inputs.deviation.values.map((deviation) => 1 / deviation) },
    outputMean: outputs.mean,
    outputScale: outputs.deviation,
    hidden,
    linear: { weights: linear, bias: { dims: [answers], values: new Float32Array(answers) } },
    sums: drawn(features, sumCount),
    squares: { dims: [sumCount, answers], values: new Float32Array(sumCount * answers) },
    last: { dims: [last, answers], values: new Float32Array(last * answers) },
  };
}
