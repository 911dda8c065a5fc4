import { stlFault } from './stl-fault.js';

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
 * @throws {InputError} `bad-stl` for a header cut short, a count that is not the file's, no triangles, or a
 *   coordinate that is not a number
 */
export function readBinaryStl(bytes: Uint8Array, source?: string): Float32Array {
  if (bytes.length < START)
    throw stlFault(
      source,
      `must be an STL file, text or binary; a binary one has at least ${START} bytes`,
      `${bytes.length} bytes that are not text`,
      'Was it exported completely, and as STL?',
    );
  const count = countOf(bytes);
  if (!isWholeBinaryStl(bytes))
    throw stlFault(
      source,
      `must be as long as its count of triangles (at byte ${HEADER}) says: ${START + RECORD * count} bytes for ${count}`,
      `${bytes.length} bytes, room for ${Math.floor((bytes.length - START) / RECORD)} triangles`,
      'Was it cut short on the way, or is it another format than STL? Export it once more.',
    );
  if (count === 0)
    throw stlFault(source, 'must hold triangles', 'a count of 0', 'Was a body chosen for the export?');
  return corners(bytes, count, source);
}

function corners(bytes: Uint8Array, count: number, source?: string): Float32Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  const out = new Float32Array(9 * count);
  for (let triangle = 0; triangle < count; triangle++) {
    for (let i = 0; i < 9; i++) {
      const at = START + RECORD * triangle + 12 + 4 * i; // 12: past the normal
      const value = view.getFloat32(at, true);
      if (!Number.isFinite(value))
        throw stlFault(
          source,
          'must have finite coordinates',
          `${value} at byte ${at} (triangle ${triangle + 1} of ${count})`,
          'Export the mesh once more.',
        );
      out[9 * triangle + i] = value;
    }
  }
  return out;
}
