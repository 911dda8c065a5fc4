import type { Tensor } from '../tensor.js';
import { type Bytes, bytes, float, integer, integers, join, message, textField } from './protobuf.js';

/** One operation of a graph: names of what goes in and comes out. */
export interface OnnxNode {
  readonly op: string;
  readonly inputs: readonly string[];
  readonly outputs: readonly string[];
  /** Whole numbers, or floats. */
  readonly integers?: Readonly<Record<string, number>>;
  readonly floats?: Readonly<Record<string, number>>;
}

/** Shape of what a graph takes or gives; a word stands for a size that varies from call to call. */
export type Shape = readonly (number | string)[];

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
const FLOAT = 1; // TensorProto.DataType
const ATTRIBUTE_FLOAT = 1; // AttributeProto.AttributeType
const ATTRIBUTE_INT = 2;

/**
 * Writes a graph of 32-bit float tensors as an ONNX file (IR version 8, opset 17).
 *
 * Fields go out in ascending order, as other writers put them, so that a file can be compared byte for byte.
 * Field numbers: onnx.proto of the ONNX project, IR version 8.
 */
export const onnxFile = (graph: OnnxGraph): Uint8Array =>
  join([
    integer(1, IR_VERSION),
    textField(2, 'flarewise'),
    message(7, ...graphFields(graph)),
    message(8, textField(1, ''), integer(2, OPSET)),
    ...Object.entries(graph.notes).map(([key, value]) => message(14, textField(1, key), textField(2, value))),
  ]);

const graphFields = ({ name, inputs, outputs, constants, nodes }: OnnxGraph): Bytes[] => [
  ...nodes.map((node, i) => message(1, ...nodeFields(node, i))),
  textField(2, name),
  ...Object.entries(constants).map(([key, tensor]) => message(5, ...tensorFields(key, tensor))),
  ...Object.entries(inputs).map(([key, shape]) => message(11, ...valueFields(key, shape))),
  ...Object.entries(outputs).map(([key, shape]) => message(12, ...valueFields(key, shape))),
];

const nodeFields = ({ op, inputs, outputs, integers = {}, floats = {} }: OnnxNode, i: number): Bytes[] => [
  ...inputs.map((input) => textField(1, input)),
  ...outputs.map((output) => textField(2, output)),
  textField(3, `${op.toLowerCase()}-${i + 1}`),
  textField(4, op),
  ...Object.entries(floats).map(([key, value]) =>
    message(5, textField(1, key), float(2, value), integer(20, ATTRIBUTE_FLOAT)),
  ),
  ...Object.entries(integers).map(([key, value]) =>
    message(5, textField(1, key), integer(3, value), integer(20, ATTRIBUTE_INT)),
  ),
];

const tensorFields = (name: string, { dims, values }: Tensor): Bytes[] => [
  integers(1, dims),
  integer(2, FLOAT),
  textField(8, name),
  bytes(9, littleEndian(values)),
];

const valueFields = (name: string, shape: Shape): Bytes[] => [
  textField(1, name),
  message(
    2,
    message(
      1,
      integer(1, FLOAT),
      message(
        2,
        ...shape.map((size) => message(1, typeof size === 'number' ? integer(1, size) : textField(2, size))),
      ),
    ),
  ),
];

/** Raw data is little-endian whatever the machine. */
function littleEndian(values: Float32Array): Uint8Array {
  const view = new DataView(new ArrayBuffer(4 * values.length));
  values.forEach((value, i) => {
    view.setFloat32(4 * i, value, true);
  });
  return new Uint8Array(view.buffer);
}
