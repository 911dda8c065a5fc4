import {
  closeSync,
  fchmodSync,
  fchownSync,
  fsyncSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  type Stats,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { newLeftover } from './leftovers.js';

interface Writing {
  /** Rights of a new file; one that is replaced hands its own on. */
  readonly mode?: number;
}

/**
 * Writes a file whole or not at all, in place of one of that name.
 *
 * The content is written beside it and renamed into place: whenever the program is killed, the old file stands there
 * or the new one. A link stays and its file is replaced.
 *
 * @throws the system's error when it cannot be written; nothing is left behind then
 */
export function putFile(path: string, content: string | Uint8Array, writing: Writing = {}): void {
  const place = realPlace(path);
  const beside = putBeside(place, content, writing);
  try {
    renameSync(beside, place);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
  syncFolder(dirname(place));
}

/** Writes a file's new content beside it, under a name that shows whose it is, and returns that path. */
export function putBeside(place: string, content: string | Uint8Array, { mode = 0o666 }: Writing): string {
  const before = statSync(place, { throwIfNoEntry: false });
  if (before && !before.isFile()) throw notAFile(before);
  const beside = join(dirname(place), newLeftover());
  const file = openSync(beside, 'wx', mode);
  try {
    writeFileSync(file, content); // unlike a single write, goes on until all is written
    if (before) keepRights(file, before);
    fsyncSync(file);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  } finally {
    closeSync(file);
  }
  return beside;
}

/** Where a path leads in the end; itself when there is nothing yet. */
export function realPlace(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    return path;
  }
}

/** The system's error for something that is no ordinary file. */
export const notAFile = (found: Pick<Stats, 'isDirectory'>): NodeJS.ErrnoException =>
  Object.assign(new Error('not an ordinary file'), { code: found.isDirectory() ? 'EISDIR' : 'ENOTSUP' });

/** Makes what was renamed in a folder outlast a power cut, where the system can. */
export function syncFolder(path: string): void {
  try {
    const folder = openSync(path, 'r');
    try {
      fsyncSync(folder);
    } finally {
      closeSync(folder);
    }
  } catch {
    // Windows and some mounted disks know no such thing; the rename itself has been done
  }
}

function keepRights(file: number, { mode, uid, gid }: Stats): void {
  for (const hand of [() => fchownSync(file, uid, gid), () => fchmodSync(file, mode & 0o7777)])
    try {
      hand();
    } catch {
      // only an administrator may give files away, and some disks know no rights
    }
}
