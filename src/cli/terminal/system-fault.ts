import { visible } from '../../base/visible.js';
import { systemReason } from '../../files/system-reason.js';

/** An error with which the system refused a call, such as a write to a full disk. */
export type SystemError = NodeJS.ErrnoException & { readonly code: string; readonly syscall: string };

export const isSystemError = (error: unknown): error is SystemError =>
  error instanceof Error &&
  typeof (error as NodeJS.ErrnoException).code === 'string' &&
  typeof (error as NodeJS.ErrnoException).syscall === 'string';

/** What the system refused, why, and what to do about it, in two sentences. */
export function wordSystemFault({ code, syscall, path }: SystemError): string {
  const { why, remedy } = systemReason(code);
  return visible(`${path === undefined ? '' : `${path}: `}${syscall} failed, as ${why}. ${remedy}`);
}

/** The same of an answer, or of what is said beside it, that cannot be written out. */
export function wordStreamFault(code: string | undefined): string {
  const { why, remedy } = systemReason(String(code));
  return `The output could not be written, as ${why}. ${remedy}`;
}
