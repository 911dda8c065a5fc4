import type { Tensor } from './tensor.js';

/** The graph in a file: its operations in order, and its constants by name. */
export interface OnnxContent {
  readonly operations: readonly string[];
  readonly constants: ReadonlyMap<string, Tensor>;
}

/* Field numbers of onnx.proto of the ONNX project, IR version 8. */
const MODEL_GRAPH = 7;
const MODEL_OPSET = 8;
const OPSET_VERSION = 2;
const GRAPH_NODE = 1;
const GRAPH_INITIALIZER = 5;
const NODE_OPERATION = 4;
const TENSOR_DIMS = 1;
const TENSOR_TYPE = 2;
const TENSOR_NAME = 8;
const TENSOR_RAW = 9;

/** Version of the set of operations, which fixes what they mean. */
const OPSET = 17;

/** `TensorProto.DataType` of 32-bit floats, the only ones the graph has. */
const FLOAT = 1;

/**
 * Reads the operations and the constants of an ONNX file without its runtime: files as the fitting tools write them, every
 * constant a tensor of 32-bit floats as raw bytes.
 *
 * @throws {Error} for anything else
 */
export function readOnnx(file: Uint8Array): OnnxContent {
  const model = fieldsOf(file);
  const opset = theOne(fieldsOf(bytesIn(theOne(model, MODEL_OPSET))), OPSET_VERSION).value;
  if (opset !== OPSET) throw new Error(`the file's operations are of set ${opset}, not ${OPSET}`);
  const fields = fieldsOf(bytesIn(theOne(model, MODEL_GRAPH)));
  const within = (wanted: number): readonly Field[][] =>
    fields.filter(({ field }) => field === wanted).map((each) => fieldsOf(bytesIn(each)));
  return {
    operations: within(GRAPH_NODE).map((node) => textOf(node, NODE_OPERATION)),
    constants: new Map(
      within(GRAPH_INITIALIZER).map((tensor) => [textOf(tensor, TENSOR_NAME), tensorOf(tensor)]),
    ),
  };
}

function tensorOf(fields: readonly Field[]): Tensor {
  const dims = fields.filter(({ field }) => field === TENSOR_DIMS).flatMap(wholeNumbersIn);
  const raw = bytesIn(theOne(fields, TENSOR_RAW));
  const size = dims.reduce((product, each) => product * each, 1);
  if (theOne(fields, TENSOR_TYPE).value !== FLOAT || raw.length !== 4 * size)
    throw new Error('a constant is no whole tensor of floats');
  const view = new DataView(raw.buffer, raw.byteOffset, raw.byteLength);
  return { dims, values: Float32Array.from({ length: size }, (_, i) => view.getFloat32(4 * i, true)) };
}

const textOf = (fields: readonly Field[], wanted: number): string =>
  new TextDecoder().decode(bytesIn(theOne(fields, wanted)));

function theOne(fields: readonly Field[], wanted: number): Field {
  const found = fields.filter(({ field }) => field === wanted);
  if (found.length !== 1) throw new Error(`field ${wanted} must be there once`);
  return found[0];
}

/** One field of a message of the Protocol Buffers wire format: a whole number, or bytes. */
interface Field {
  readonly field: number;
  readonly value: number | Uint8Array;
}

/* Wire types. Source: the format's published encoding guide. */
const VARINT = 0;
const LENGTH_DELIMITED = 2;
const FIXED32 = 5;

function fieldsOf(message: Uint8Array): Field[] {
  const fields: Field[] = [];
  let at = 0;
  while (at < message.length) {
    const tag = varintAt(message, at);
    const head = varintAt(message, tag.end);
    const wire = tag.value & 7;
    const isBytes = wire === LENGTH_DELIMITED;
    if (!isBytes && wire !== VARINT && wire !== FIXED32) throw new Error(`a field of wire type ${wire}`);
    const end = isBytes ? head.end + head.value : wire === FIXED32 ? tag.end + 4 : head.end;
    if (end > message.length) throw new Error('the file ends within a field');
    fields.push({ field: tag.value >>> 3, value: isBytes ? message.subarray(head.end, end) : head.value });
    at = end;
  }
  return fields;
}

function bytesIn({ field, value }: Field): Uint8Array {
  if (typeof value === 'number') throw new Error(`field ${field} must hold bytes`);
  return value;
}

/** Whole numbers of a repeated field, packed or one by one. */
function wholeNumbersIn({ value }: Field): number[] {
  if (typeof value === 'number') return [value];
  const numbers: number[] = [];
  for (let at = 0; at < value.length; ) {
    const each = varintAt(value, at);
    numbers.push(each.value);
    at = each.end;
  }
  return numbers;
}

/** Seven bits a byte, least first, the high bit set on all but the last. */
function varintAt(bytes: Uint8Array, from: number): { value: number; end: number } {
  let value = 0;
  for (let at = from, weight = 1; at < bytes.length; at++, weight *= 128) {
    value += (bytes[at] & 127) * weight;
    if (bytes[at] < 128) return { value, end: at + 1 };
  }
  throw new Error('the file ends within a number');
}
