import { Refusal } from '../../records/refusals/refusal.js';
import { readAsciiStl } from './read-ascii-stl.js';
import { isWholeBinaryStl, readBinaryStl } from './read-binary-stl.js';

/**
 * Corners of the triangles of an STL file: nine numbers a triangle, x y z of its three corners in turn,
 * counterclockwise seen from outside. In the file's own unit, which STL does not name.
 *
 * Float32 because binary STL holds no more; text is rounded to it, so that both forms of one mesh are the
 * same to the last bit. Facet normals and colours are not read: the order of the corners says the side.
 *
 * Which form a file has follows from its length and content, not from its first word: binary files too may
 * begin with "solid".
 *
 * @param bytes   the whole file
 * @param source  what the person called it, for the error
 * @throws {Refusal} `stl-empty`, or as `readAsciiStl` and `readBinaryStl` do, with the line or the byte
 */
export function readStl(bytes: Uint8Array, source?: string): Float32Array {
  if (isWholeBinaryStl(bytes)) return readBinaryStl(bytes, source);
  if (hasText(bytes)) return readAsciiStl(new TextDecoder('utf-8').decode(bytes), source);
  if (bytes.length === 0) throw new Refusal([{ code: 'stl-empty', params: {} }], source);
  return readBinaryStl(bytes, source);
}

/** Whether a file begins like a text: without the bytes that only binary files have. */
const hasText = (bytes: Uint8Array): boolean =>
  bytes.length > 0 &&
  bytes.subarray(0, 1000).every((byte) => (byte >= 9 && byte <= 13) || (byte >= 32 && byte !== 127));
