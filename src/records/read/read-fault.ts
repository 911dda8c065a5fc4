import { InputError } from '../../base/errors.js';

/** What the system says of a file or folder that cannot be read, and what to do about it. */
const REASONS: Readonly<Record<string, readonly [got: string, hint: string]>> = {
  ENOTDIR: ['lies in something that is no folder', 'Check the path.'],
  EACCES: ['may not be read', 'Check its permissions, and those of its folder.'],
  EPERM: ['may not be read', 'Check its permissions, and those of its folder.'],
  ELOOP: ['is a link that leads back to itself', 'Check where the link points.'],
  ENAMETOOLONG: ['has a name that is too long', 'Name a file, not what stands in it.'],
  ERR_INVALID_ARG_VALUE: ['has a name that no file can have', 'Check the name.'],
  EMFILE: ['cannot be opened while so many files are open', 'Close other programs and try again.'],
  ENFILE: ['cannot be opened while so many files are open', 'Close other programs and try again.'],
  EIO: ['lies on a disk that reports an error', 'Check the disk, or take another copy of the file.'],
  EBUSY: ['is in use by another program', 'Close that program and try again.'],
  ENOMEM: ['does not fit into memory', 'Close other programs and try again.'],
  ETIMEDOUT: ['lies on a network disk that does not answer', 'Check the connection and try again.'],
  ESTALE: ['lies on a network disk that does not answer', 'Check the connection and try again.'],
};

/**
 * What kept a file or folder from being read, as one sentence.
 *
 * @param error   as the system threw it
 * @param kind    what was expected: `a JSON file`
 * @param remedy  what to check when there is nothing of that name
 * @returns the error itself where it is none of the system's
 */
export function readFault(error: unknown, path: string, kind: string, remedy: string): unknown {
  const code = (error as NodeJS.ErrnoException).code;
  if (code === undefined) return error;
  const [got, hint] =
    code === 'ENOENT'
      ? ['does not exist', remedy]
      : code === 'EISDIR'
        ? ['is a folder', `Name ${kind.replace(/^an? /, 'one ')} in it.`]
        : (REASONS[code] ?? [`cannot be read (${code})`, 'Check the disk and the name.']);
  return new InputError(
    'no-such-file',
    { field: 'file', rule: `must be ${kind} that can be read`, got: `one that ${got}`, hint },
    path,
  );
}
