import { visible } from '../base/visible.js';

/** What was being done with a file. */
type Doing = 'read' | 'write';

/** Why the system refuses, as a clause (`the disk is full`), and what to do about it. */
interface SystemReason {
  readonly why: string;
  readonly remedy: string;
}

/** The same of a file, by what it was found to be: `one that ${got}` to be read, a path, `${got}` to be written. */
interface FileReason {
  readonly got: string;
  readonly remedy: string;
}

/** A reason, and its different wording for a file that is read or written. */
interface Row extends SystemReason {
  readonly read?: Partial<FileReason>;
  readonly write?: Partial<FileReason>;
}

const PERMISSION: Row = {
  why: 'permission is missing',
  remedy: 'Check the permissions of the file and its folder.',
  read: { got: 'may not be read' },
};
const IN_THE_WAY: Row = {
  why: 'a file stands in place of a folder',
  remedy: 'Check the path.',
  read: { got: 'lies in something that is no folder' },
  write: { got: 'where a file stands in place of a folder' },
};
const TOO_MANY: Row = { why: 'too many files are open', remedy: 'Close other programs and try again.' };
const NETWORK: Row = {
  why: 'the network disk does not answer',
  remedy: 'Check the connection and try again.',
};

/** All that the system is known to say, by its own name for it. */
const REASONS: Readonly<Record<string, Row>> = {
  ENOENT: {
    why: 'it does not exist',
    remedy: 'Check the path.',
    read: { got: 'does not exist' },
    write: { got: 'in a folder that does not exist', remedy: 'Make the folder first, or name another.' },
  },
  ENOTDIR: IN_THE_WAY,
  EEXIST: IN_THE_WAY,
  EISDIR: {
    why: 'it is a folder',
    remedy: 'Name a file in it.',
    read: { got: 'is a folder' },
    write: { got: 'a folder' },
  },
  ENOTSUP: {
    why: 'it is not an ordinary file',
    remedy: 'Name an ordinary file.',
    write: { got: 'not an ordinary file' },
  },
  EACCES: PERMISSION,
  EPERM: PERMISSION,
  EROFS: { why: 'the disk cannot be written to', remedy: 'Choose another folder.' },
  ENOSPC: { why: 'the disk is full', remedy: 'Make room, or choose another disk.' },
  EDQUOT: { why: 'your share of the disk is used up', remedy: 'Make room, or choose another disk.' },
  EFBIG: { why: 'the file would be larger than the disk allows', remedy: 'Choose another disk.' },
  ENAMETOOLONG: {
    why: 'the name is too long',
    remedy: 'Choose a shorter name.',
    read: { got: 'has a name that is too long', remedy: 'Name a file, not what stands in it.' },
    write: { got: 'a name too long for the disk' },
  },
  ERR_INVALID_ARG_VALUE: {
    why: 'no file can have such a name',
    remedy: 'Check the name.',
    read: { got: 'has a name that no file can have' },
    write: { got: 'a name that no file can have' },
  },
  ELOOP: { why: 'it is a link that leads back to itself', remedy: 'Check where the link points.' },
  EMFILE: TOO_MANY,
  ENFILE: TOO_MANY,
  ENOMEM: { why: 'memory is used up', remedy: 'Close other programs and try again.' },
  EAGAIN: {
    why: 'the system is out of processes or memory',
    remedy: 'Close other programs and try again.',
  },
  EBUSY: { why: 'another program is using it', remedy: 'Close that program and try again.' },
  EIO: { why: 'the disk reports an error', remedy: 'Check the disk, or choose another.' },
  ETIMEDOUT: NETWORK,
  ESTALE: NETWORK,
};

const rowOf = (code: string): Row => (Object.hasOwn(REASONS, code) ? REASONS[code] : unknown(code));

const CHECK = { remedy: 'Check the disk and the path.' };
const unknown = (code: string): Row => ({
  why: `the system reports ${code}`,
  remedy: 'Try again.',
  read: CHECK,
  write: CHECK,
});

/** Why the system refuses what it names so (`ENOSPC`). */
export const systemReason = (code: string): SystemReason => rowOf(code);

/** The same of a file that cannot be read or written. */
export function fileReason(code: string, doing: Doing): FileReason {
  const { why, remedy, [doing]: special } = rowOf(code);
  const got = doing === 'read' ? `cannot be read, as ${why}` : `which cannot be written, as ${why}`;
  return { got, remedy, ...special };
}

/** An error with which the system refused a call, such as a write to a full disk. */
type SystemError = NodeJS.ErrnoException & { readonly code: string; readonly syscall: string };

export const isSystemError = (error: unknown): error is SystemError =>
  error instanceof Error &&
  typeof (error as NodeJS.ErrnoException).code === 'string' &&
  typeof (error as NodeJS.ErrnoException).syscall === 'string';

/** What the system refused, why, and what to do about it, in two sentences. */
export function formatSystemFault({ code, syscall, path }: SystemError): string {
  const { why, remedy } = systemReason(code);
  return visible(`${path === undefined ? '' : `${path}: `}${syscall} failed, as ${why}. ${remedy}`);
}

/** The same for an answer, or messages beside it, that cannot be written out. */
export function formatStreamFault(code: string | undefined): string {
  const { why, remedy } = systemReason(String(code));
  return `The output could not be written, as ${why}. ${remedy}`;
}
