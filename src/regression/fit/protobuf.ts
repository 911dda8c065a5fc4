/*
 * As much of the Protocol Buffers wire format as an ONNX file needs. A message is a list of fields, each written as
 * its bytes. Source: the format's published encoding guide (varints, length-delimited fields, fixed32).
 */

export type Bytes = readonly number[] | Uint8Array;

const VARINT = 0;
const LENGTH_DELIMITED = 2;
const FIXED32 = 5;

/** A field that holds a non-negative whole number. */
export const integer = (field: number, value: number): number[] => [
  ...varint((field << 3) | VARINT),
  ...varint(value),
];

/** A field that holds a list of them, packed: a reader must take it packed or one by one. */
export const integers = (field: number, values: readonly number[]): Uint8Array =>
  bytes(field, values.flatMap(varint));

/** A field that holds a float. */
export const float = (field: number, value: number): number[] => [
  ...varint((field << 3) | FIXED32),
  ...new Uint8Array(Float32Array.of(value).buffer),
];

/** A field that holds bytes: a string, a message, raw data. */
export function bytes(field: number, content: Bytes): Uint8Array {
  const head = [...varint((field << 3) | LENGTH_DELIMITED), ...varint(content.length)];
  return join([head, content]);
}

export const textField = (field: number, content: string): Uint8Array =>
  bytes(field, new TextEncoder().encode(content));

/** A field that holds a message: its own fields, one after the other. */
export const message = (field: number, ...fields: readonly Bytes[]): Uint8Array => bytes(field, join(fields));

export function join(parts: readonly Bytes[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Seven bits a byte, least first, the high bit set on all but the last. By division: shifts would cut at 32 bits. */
function varint(value: number): number[] {
  const out: number[] = [];
  let rest = value;
  while (rest >= 128) {
    out.push((rest % 128) + 128);
    rest = Math.floor(rest / 128);
  }
  out.push(rest);
  return out;
}
