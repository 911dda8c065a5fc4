import { visible } from '../../base/visible.js';

/** An error with which the system refused a call, such as a write to a full disk. */
export type SystemError = NodeJS.ErrnoException & { readonly code: string; readonly syscall: string };

export const isSystemError = (error: unknown): error is SystemError =>
  error instanceof Error &&
  typeof (error as NodeJS.ErrnoException).code === 'string' &&
  typeof (error as NodeJS.ErrnoException).syscall === 'string';

/** Why the system refuses, and what to do about it. */
const REASONS: Readonly<Record<string, readonly [why: string, remedy: string]>> = {
  ENOSPC: ['the disk is full', 'Make room, or choose another disk.'],
  EDQUOT: ['your share of the disk is used up', 'Make room, or choose another disk.'],
  EFBIG: ['the file would be larger than the disk allows', 'Choose another disk.'],
  EROFS: ['the disk cannot be written to', 'Choose another folder.'],
  EACCES: ['permission is missing', 'Check the permissions of the file and its folder.'],
  EPERM: ['permission is missing', 'Check the permissions of the file and its folder.'],
  ENOENT: ['it does not exist', 'Check the path.'],
  ENOTDIR: ['the path leads through something that is no folder', 'Check the path.'],
  EISDIR: ['it is a folder', 'Name a file in it.'],
  ELOOP: ['it is a link that leads back to itself', 'Check where the link points.'],
  ENAMETOOLONG: ['the name is too long', 'Choose a shorter one.'],
  EMFILE: ['too many files are open', 'Close other programs and try again.'],
  ENFILE: ['too many files are open', 'Close other programs and try again.'],
  ENOMEM: ['memory is used up', 'Close other programs and try again.'],
  EAGAIN: ['the system is out of processes or memory', 'Close other programs and try again.'],
  EIO: ['the disk reports an error', 'Check the disk, or choose another.'],
};

/** What the system refused, why, and what to do about it, in two sentences. */
export function wordSystemFault({ code, syscall, path }: SystemError): string {
  const [why, remedy] = REASONS[code] ?? [`the system reports ${code}`, 'Try again.'];
  return visible(`${path === undefined ? '' : `${path}: `}${syscall} failed, as ${why}. ${remedy}`);
}

/** The same of an answer, or of what is said beside it, that cannot be written out. */
export function wordStreamFault(code: string | undefined): string {
  const [why, remedy] = REASONS[code ?? ''] ?? [`the system reports ${code}`, 'Try again.'];
  return `The output could not be written, as ${why}. ${remedy}`;
}
