import { sync as writeFileAtomic } from 'write-file-atomic';
import { InputError } from '../errors.js';

const FLAG = '--out';

/**
 * The kind of file a path names, by its ending.
 *
 * @throws {InputError} `flag` when it has none of the known endings
 */
export function kindOfFile<const T extends string>(path: string, kinds: readonly T[]): T {
  const found = kinds.find((kind) => path.toLowerCase().endsWith(`.${kind}`));
  if (found !== undefined) return found;
  throw new InputError('flag', {
    field: FLAG,
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
 * @throws {InputError} `cannot-write` when the place named cannot be written to
 */
export function writeOut(path: string, bytes: Buffer): void {
  try {
    writeFileAtomic(path, bytes);
  } catch (error) {
    const reason = REASONS[(error as NodeJS.ErrnoException).code ?? ''];
    if (!reason) throw error;
    throw new InputError('cannot-write', {
      field: FLAG,
      rule: 'must be a file that can be written',
      got: `${JSON.stringify(path)}, ${reason[0]}`,
      hint: reason[1],
    });
  }
}
