import type { onnx } from 'onnx-proto';
import type { Tensor } from '../../src/regression/tensor.js';
import type { Network } from '../fit/network.js';

/**
 * The network that a file holds, taken out of it by another reader.
 *
 * @param squares  learned sums whose squares enter the answers
 */
export function networkIn(proto: onnx.ModelProto, squares: number): Network {
  const tensors = new Map(
    (proto.graph?.initializer ?? []).map(({ name, dims, rawData }) => [
      name,
      tensorOf((dims ?? []).map(Number), rawData as Uint8Array),
    ]),
  );
  const get = (name: string): Tensor => {
    const found = tensors.get(name);
    if (!found) throw new Error(`the file holds no ${name}`);
    return found;
  };
  const layers = [...tensors.keys()].filter((name) => name?.startsWith('weights-')).length;
  const weights = get('answer-weights'); // features, squares and last layer, one below the other
  const features = get('input-mean').values.length;
  return {
    inputMean: get('input-mean'),
    inputRate: get('input-rate'),
    outputMean: get('output-mean'),
    outputScale: get('output-scale'),
    hidden: Array.from({ length: layers }, (_, i) => ({
      weights: get(`weights-${i + 1}`),
      bias: get(`bias-${i + 1}`),
    })),
    linear: { weights: rowsOf(weights, 0, features), bias: get('answer-bias') },
    sums: get('sum-weights'),
    squares: rowsOf(weights, features, features + squares),
    last: rowsOf(weights, features + squares, weights.dims[0]),
  };
}

function tensorOf(dims: number[], raw: Uint8Array): Tensor {
  const view = new DataView(raw.buffer, raw.byteOffset, raw.byteLength);
  const values = Float32Array.from({ length: raw.byteLength / 4 }, (_, i) => view.getFloat32(4 * i, true));
  return { dims, values };
}

const rowsOf = ({ dims: [, columns], values }: Tensor, from: number, to: number): Tensor => ({
  dims: [to - from, columns],
  values: values.subarray(columns * from, columns * to),
});
