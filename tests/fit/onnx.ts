import onnxProto, { type onnx } from 'onnx-proto';
import type { Tensor } from '../../src/regression/tensor.js';

/** One operation of a graph: names of what goes in and comes out. */
export interface OnnxNode {
  readonly op: string;
  readonly inputs: readonly string[];
  readonly outputs: readonly string[];
  /** Whole numbers. */
  readonly integers?: Readonly<Record<string, number>>;
}

/** Shape of what a graph takes or gives; a word stands for a size that varies from call to call. */
type Shape = readonly (number | string)[];

export interface OnnxGraph {
  readonly name: string;
  readonly inputs: Readonly<Record<string, Shape>>;
  readonly outputs: Readonly<Record<string, Shape>>;
  readonly constants: Readonly<Record<string, Tensor>>;
  readonly nodes: readonly OnnxNode[];
  /** Kept in the file for whoever opens it. */
  readonly notes: Readonly<Record<string, string>>;
}

const IR_VERSION = 8;
const OPSET = 17;
const { AttributeProto, ModelProto, TensorProto } = onnxProto.onnx;
const { FLOAT } = TensorProto.DataType;
const { INT } = AttributeProto.AttributeType;

/** Writes a graph of 32-bit float tensors as an ONNX file (IR version 8, opset 17). */
export const onnxFile = (graph: OnnxGraph): Uint8Array =>
  ModelProto.encode({
    irVersion: IR_VERSION,
    producerName: 'flarewise',
    graph: graphProto(graph),
    opsetImport: [{ domain: '', version: OPSET }],
    metadataProps: Object.entries(graph.notes).map(([key, value]) => ({ key, value })),
  }).finish();

const graphProto = ({ name, inputs, outputs, constants, nodes }: OnnxGraph): onnx.IGraphProto => ({
  node: nodes.map(nodeProto),
  name,
  initializer: Object.entries(constants).map(([key, { dims, values }]) => ({
    dims: [...dims],
    dataType: FLOAT,
    name: key,
    rawData: littleEndian(values),
  })),
  input: Object.entries(inputs).map(valueProto),
  output: Object.entries(outputs).map(valueProto),
});

const nodeProto = ({ op, inputs, outputs, integers = {} }: OnnxNode, i: number): onnx.INodeProto => ({
  input: [...inputs],
  output: [...outputs],
  name: `${op.toLowerCase()}-${i + 1}`,
  opType: op,
  attribute: Object.entries(integers).map(([name, value]) => ({ name, i: value, type: INT })),
});

const valueProto = ([name, shape]: [string, Shape]): onnx.IValueInfoProto => ({
  name,
  type: {
    tensorType: {
      elemType: FLOAT,
      shape: {
        dim: shape.map((size) => (typeof size === 'number' ? { dimValue: size } : { dimParam: size })),
      },
    },
  },
});

/** Raw data is little-endian whatever the machine. */
function littleEndian(values: Float32Array): Uint8Array {
  const view = new DataView(new ArrayBuffer(4 * values.length));
  values.forEach((value, i) => {
    view.setFloat32(4 * i, value, true);
  });
  return new Uint8Array(view.buffer);
}
