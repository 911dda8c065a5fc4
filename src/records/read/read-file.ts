import {
  closeSync,
  constants,
  fstatSync,
  openSync,
  readdirSync,
  readSync,
  type Stats,
  statSync,
} from 'node:fs';
import { dirname, isAbsolute, join } from 'node:path';
import { InputError } from '../../base/errors.js';
import { readFault } from './read-fault.js';

/** What a file should be, and the largest that is read. */
export interface FileKind {
  readonly name: string;
  readonly mostMb: number;
}

/** One record. */
export const JSON_FILE: FileKind = { name: 'a JSON file', mostMb: 16 };
/** Many records, with the meshes of their cores. */
export const BUNDLE_FILE: FileKind = { name: 'a JSON file', mostMb: 64 };
/** Far more than the rows that are read of it. */
export const LIST_FILE: FileKind = { name: 'a list of bowlers', mostMb: 16 };
export const SHOT_LIST_FILE: FileKind = { name: 'a list of shots', mostMb: 16 };
/** Five million triangles in binary, one million in text. */
export const STL_FILE: FileKind = { name: 'an STL file', mostMb: 256 };

const MB = 1_000_000;

/**
 * The bytes of a file.
 *
 * Only a regular file is opened: a pipe or a device may never end, and reading one may do something. Opened without
 * waiting, in case it became a pipe meanwhile.
 *
 * @param path    as the person typed it; it appears in the error
 * @param remedy  what to check when it does not exist
 * @throws {InputError} `no-such-file`, `no-regular-file`, `too-large`
 */
export function readBytes(
  path: string,
  kind: FileKind,
  remedy = 'Check the spelling and the folder; demo records go by their id, without folder or ending.',
): Uint8Array {
  try {
    checkRegular(statSync(path), path, kind);
    const file = openSync(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
    try {
      const stats = fstatSync(file);
      checkRegular(stats, path, kind);
      return readWhole(file, stats.size, path, kind);
    } finally {
      closeSync(file);
    }
  } catch (error) {
    throw error instanceof InputError ? error : readFault(error, path, kind.name, remedy);
  }
}

/**
 * Names of what lies in a folder.
 *
 * @throws {InputError} `no-such-file`
 */
export function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch (error) {
    throw readFault(error, folder, 'a folder', 'Check the spelling.');
  }
}

/** A file that a record names, seen from the record's own folder. */
export const fileBeside = (record: string, file: string): string =>
  isAbsolute(file) ? file : join(dirname(record), file);

/** @param size  as the system gives it; a file may have grown since, and some of the system's own say 0 */
function readWhole(file: number, size: number, path: string, kind: FileKind): Uint8Array {
  const most = kind.mostMb * MB;
  if (size > most) throw tooLarge(path, kind);
  let bytes = Buffer.allocUnsafe(size + 1);
  let length = 0;
  for (;;) {
    const read = readSync(file, bytes, length, bytes.length - length, null);
    if (read === 0) return bytes.subarray(0, length);
    length += read;
    if (length > most) throw tooLarge(path, kind);
    if (length === bytes.length) bytes = Buffer.concat([bytes, Buffer.allocUnsafe(length + 4096)]);
  }
}

function checkRegular(stats: Stats, path: string, kind: FileKind): void {
  if (stats.isFile()) return;
  if (stats.isDirectory()) throw Object.assign(new Error(), { code: 'EISDIR' });
  const what = stats.isFIFO() ? 'a pipe' : stats.isSocket() ? 'a socket' : 'a device';
  throw new InputError(
    'no-regular-file',
    {
      field: 'file',
      rule: `must be ${kind.name}`,
      got: what,
      hint: 'Save what comes from it as a file, and name that.',
    },
    path,
  );
}

const tooLarge = (path: string, { name, mostMb }: FileKind): InputError =>
  new InputError(
    'too-large',
    {
      field: 'file',
      rule: `must be ${name} of at most ${mostMb} MB`,
      got: 'more',
      hint: 'Is it the right file?',
    },
    path,
  );
