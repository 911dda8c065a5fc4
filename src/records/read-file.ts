import { readFileSync } from 'node:fs';
import { dirname, isAbsolute, join } from 'node:path';
import { InputError } from '../errors.js';

/**
 * The bytes of a file.
 *
 * @param path    as the person typed it; it stands in the error
 * @param kind    what it should be: `a JSON file`
 * @param remedy  what to check when it does not exist
 * @throws {InputError} `no-such-file`
 */
export function readBytes(
  path: string,
  kind: string,
  remedy = 'Check the spelling and the folder; demo records go by their id, without folder or ending.',
): Uint8Array {
  try {
    return readFileSync(path);
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    const WHY: Record<string, [string, string]> = {
      ENOENT: ['does not exist', remedy],
      EISDIR: ['is a folder', `Name ${kind.replace(/^an? /, 'one ')} in it.`],
      EACCES: ['may not be read', 'Check its permissions.'],
    };
    const [got, hint] = WHY[code ?? ''] ?? [
      `cannot be read (${code ?? 'unknown reason'})`,
      'Check the disk and the name.',
    ];
    throw new InputError(
      'no-such-file',
      { field: 'file', rule: `must be ${kind} that can be read`, got: `one that ${got}`, hint },
      path,
    );
  }
}

/** A file that a record names, seen from the record's own folder. */
export const fileBeside = (record: string, file: string): string =>
  isAbsolute(file) ? file : join(dirname(record), file);
