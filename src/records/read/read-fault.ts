import { InputError } from '../../base/errors.js';
import { fileReason } from '../../files/system-fault.js';

/**
 * What kept a file or folder from being read, as one sentence.
 *
 * @param error   as the system threw it
 * @param kind    what was expected: `a JSON file`
 * @param remedy  what to check when there is nothing of that name
 * @returns the error itself where it does not come from the system
 */
export function readFault(error: unknown, path: string, kind: string, remedy: string): unknown {
  const code = (error as NodeJS.ErrnoException).code;
  if (code === undefined) return error;
  const found = fileReason(code, 'read');
  const hint =
    code === 'ENOENT'
      ? remedy
      : code === 'EISDIR'
        ? `Name ${kind.replace(/^an? /, 'one ')} in it.`
        : found.remedy;
  return new InputError(
    'no-such-file',
    { field: 'file', rule: `must be ${kind} that can be read`, got: `one that ${found.got}`, hint },
    path,
  );
}
