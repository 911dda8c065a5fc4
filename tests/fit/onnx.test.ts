import { onnx } from 'onnx-proto';
import { expect, test } from 'vitest';
import { smallNetwork } from '../support/regression-fixtures.js';
import { networkGraph } from './network-graph.js';
import { onnxFile } from './onnx.js';

const file = onnxFile(networkGraph(smallNetwork(), { seed: '7', made: 'für einen Test' }));

test('onnxFile: the file has IR version 8, opset 17, the notes and every operation in order', () => {
  const model = onnx.ModelProto.decode(file);
  expect(Number(model.irVersion)).toBe(8);
  expect(model.opsetImport.map(({ domain, version }) => [domain, Number(version)])).toEqual([['', 17]]);
  expect(model.metadataProps.map(({ key, value }) => [key, value])).toEqual([
    ['seed', '7'],
    ['made', 'für einen Test'],
  ]);
  const operations = 'Sub Mul Gemm Tanh Gemm Tanh MatMul Mul Concat Add Add Gemm Mul Add';
  expect(model.graph?.node?.map(({ opType }) => opType)).toEqual(operations.split(' '));
});

test('onnxFile: every parameter comes back, bit for bit', () => {
  const initializers = onnx.ModelProto.decode(file).graph?.initializer ?? [];
  const found = new Map(initializers.map((each) => [each.name, each]));
  const wanted = Object.entries(networkGraph(smallNetwork(), {}).constants);
  expect(wanted.length).toBe(11);
  for (const [name, { dims, values }] of wanted) {
    const raw = found.get(name)?.rawData as Uint8Array;
    const view = new DataView(raw.buffer, raw.byteOffset, raw.byteLength);
    expect(found.get(name)?.dims?.map(Number)).toEqual(dims);
    expect(Array.from(values, (_, i) => view.getFloat32(4 * i, true))).toEqual([...values]);
  }
});

test('onnxFile: read and written again, the file is the same byte for byte', () => {
  const again = onnx.ModelProto.encode(onnx.ModelProto.decode(file)).finish();
  expect(Buffer.from(again).equals(Buffer.from(file))).toBe(true);
});
