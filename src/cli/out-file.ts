import { accessSync, constants } from 'node:fs';
import { dirname } from 'node:path';
import { sync as writeFileAtomic } from 'write-file-atomic';
import { InputError } from '../errors.js';

const OUT = '--out';

/**
 * The kind of file a path names, by its ending.
 *
 * @param flag  that names it
 * @throws {InputError} `flag` when it has none of the known endings
 */
export function kindOfFile<const T extends string>(path: string, kinds: readonly T[], flag = OUT): T {
  const found = kinds.find((kind) => path.toLowerCase().endsWith(`.${kind}`));
  if (found !== undefined) return found;
  throw new InputError('flag', {
    field: flag,
    rule: `must end in ${kinds.map((kind) => `.${kind}`).join(' or ')}`,
    got: JSON.stringify(path),
    hint: 'The ending says what kind of file is written.',
  });
}

/** What keeps a file from being written, and what to do about it. */
const REASONS: Readonly<Record<string, readonly [got: string, hint: string]>> = {
  ENOENT: ['in a folder that does not exist', 'Make the folder first, or name another.'],
  ENOTDIR: ['in something that is no folder', 'Check the path.'],
  EISDIR: ['a folder', 'Name a file in it.'],
  EACCES: ['where you may not write', 'Choose another folder.'],
  EROFS: ['on a disk that cannot be written to', 'Choose another folder.'],
  ENOSPC: ['on a disk that is full', 'Make room, or choose another disk.'],
};

/**
 * Writes a file whole or not at all, in place of one of that name.
 *
 * @param flag  that names it
 * @throws {InputError} `cannot-write` when the place named cannot be written to
 */
export const writeOut = (path: string, bytes: Buffer, flag = OUT): void =>
  orSayWhy(() => writeFileAtomic(path, bytes), path, flag);

/**
 * Checks that a file's folder can be written to, so that nobody waits for an answer that has no place.
 *
 * @param flag  that names the file
 * @throws {InputError} `cannot-write` when it cannot
 */
export const checkFolder = (path: string, flag = OUT): void =>
  orSayWhy(() => accessSync(dirname(path), constants.W_OK), path, flag);

function orSayWhy(act: () => void, path: string, flag: string): void {
  try {
    act();
  } catch (error) {
    const reason = REASONS[(error as NodeJS.ErrnoException).code ?? ''];
    if (!reason) throw error;
    throw new InputError('cannot-write', {
      field: flag,
      rule: 'must be a file that can be written',
      got: `${JSON.stringify(path)}, ${reason[0]}`,
      hint: reason[1],
    });
  }
}
