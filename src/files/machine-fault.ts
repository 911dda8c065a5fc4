import { InputError } from '../base/errors.js';
import { shortened } from '../base/visible.js';

/** What keeps a file from being written, and what to do about it, by the system's name for it. */
const REASONS: Readonly<Record<string, readonly [got: string, hint: string]>> = {
  ENOENT: ['in a folder that does not exist', 'Make the folder first, or name another.'],
  ENOTDIR: ['where a file stands in place of a folder', 'Check the path.'],
  EEXIST: ['where a file stands in place of a folder', 'Check the path.'],
  EISDIR: ['a folder', 'Name a file in it.'],
  ENOTSUP: ['not an ordinary file', 'Name an ordinary file.'],
  EACCES: ['where you lack permission', 'Change its permissions, or choose another folder.'],
  EPERM: ['where you lack permission', 'Change its permissions, or choose another folder.'],
  EROFS: ['on a disk that cannot be written to', 'Choose another folder.'],
  ENOSPC: ['on a disk that is full', 'Make room, or choose another disk.'],
  EDQUOT: ['on a disk where your share is used up', 'Make room, or choose another disk.'],
  EFBIG: ['larger than a file may be there', 'Choose another disk.'],
  ENAMETOOLONG: ['a name too long for the disk', 'Choose a shorter name.'],
  ELOOP: ['a link that leads to itself', 'Check the path.'],
  EMFILE: ['while too many files are open', 'Close other programs, then try again.'],
  ENFILE: ['while too many files are open', 'Close other programs, then try again.'],
  EIO: ['on a disk that fails', 'Check the disk.'],
};

/** A place that is to be written, in words. */
export interface Place {
  readonly path: string;
  /** What named it: a flag, or words. */
  readonly field: string;
  /** What it must be; a file that can be written when left out. */
  readonly rule?: string;
  /** What to do, in place of the usual advice. */
  readonly hint?: string;
}

/**
 * Does something with a file or a folder; where the machine does not let it, says so as something a person can mend.
 *
 * @throws {InputError} `no-access`; any other error as it is
 */
export function orSayWhy<T>(place: Place, act: () => T): T {
  try {
    return act();
  } catch (error) {
    throw machineFault(error, place);
  }
}

/** An error of the system as a fault of a place; any other error as it is. */
export function machineFault(error: unknown, { path, field, rule, hint }: Place): unknown {
  const code = (error as Partial<NodeJS.ErrnoException> | null)?.code;
  if (!(error instanceof Error) || error instanceof InputError || !/^E[A-Z0-9]+$/.test(code ?? ''))
    return error;
  const [why, advice] = REASONS[code as string] ?? [`which failed (${code})`, 'Check the disk and the path.'];
  return new InputError('no-access', {
    field,
    rule: rule ?? 'must be a file that can be written',
    got: `${JSON.stringify(shortened(path, SHOWN))}, ${why}`,
    hint: hint ?? advice,
  });
}

/** Longest path that is shown whole, so that the reason behind it is not cut off with it. */
const SHOWN = 80;
