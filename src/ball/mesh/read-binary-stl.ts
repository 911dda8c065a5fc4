import { Refusal } from '../../records/refusals/refusal.js';

const HEADER = 80; // bytes of free text, then the count
const START = HEADER + 4;
const RECORD = 50; // normal and three corners as float32, then two bytes that mean nothing

const countOf = (bytes: Uint8Array): number =>
  new DataView(bytes.buffer, bytes.byteOffset).getUint32(HEADER, true);

/** Whether a file is as long as the count of triangles at byte 80 says. */
export const isWholeBinaryStl = (bytes: Uint8Array): boolean =>
  bytes.length >= START && bytes.length === START + RECORD * countOf(bytes);

/**
 * Corners of a binary STL file, nine numbers a triangle (little-endian float32; the format as commonly
 * described, from memory).
 *
 * @throws {Refusal} `stl-too-short`, `stl-other-length`, `stl-no-triangles` or `stl-not-finite`
 */
export function readBinaryStl(bytes: Uint8Array, source?: string): Float32Array {
  if (bytes.length < START)
    throw new Refusal(
      [{ code: 'stl-too-short', params: { bytes: bytes.length, leastBytes: START } }],
      source,
    );
  const count = countOf(bytes);
  if (!isWholeBinaryStl(bytes)) throw otherLength(bytes.length, count, source);
  if (count === 0) throw new Refusal([{ code: 'stl-no-triangles', params: { form: 'binary' } }], source);
  return corners(bytes, count, source);
}

function corners(bytes: Uint8Array, count: number, source?: string): Float32Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  const out = new Float32Array(9 * count);
  for (let triangle = 0; triangle < count; triangle++) {
    for (let i = 0; i < 9; i++) {
      const at = START + RECORD * triangle + 12 + 4 * i; // 12: past the normal
      const value = view.getFloat32(at, true);
      if (!Number.isFinite(value)) throw notFinite(value, at, [triangle, count], source);
      out[9 * triangle + i] = value;
    }
  }
  return out;
}

const otherLength = (bytes: number, triangles: number, source?: string): Refusal =>
  new Refusal(
    [
      {
        code: 'stl-other-length',
        params: {
          countAtByte: HEADER,
          triangles,
          bytes,
          bytesWanted: START + RECORD * triangles,
          roomForTriangles: Math.floor((bytes - START) / RECORD),
        },
      },
    ],
    source,
  );

const notFinite = (
  value: number,
  atByte: number,
  [triangle, triangles]: readonly [index: number, of: number],
  source?: string,
): Refusal =>
  new Refusal(
    [
      {
        code: 'stl-not-finite',
        params: {
          value: Number.isNaN(value) ? 'NaN' : value > 0 ? 'Infinity' : '-Infinity',
          atByte,
          triangle: triangle + 1,
          triangles,
        },
      },
    ],
    source,
  );
