import { InputError } from '../../base/errors.js';
import { checkPlace } from '../../files/check-place.js';
import { orSayWhy } from '../../files/machine-fault.js';
import { putFile } from '../../files/put-file.js';

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

/**
 * Writes a file whole or not at all, in place of one of that name.
 *
 * @param flag  that names it
 * @throws {InputError} `no-access` when the place named cannot be written to
 */
export const writeOut = (path: string, bytes: Uint8Array, flag = OUT): void =>
  orSayWhy({ path, field: flag }, () => putFile(path, bytes));

/**
 * A file that a flag names, after a check that it can be written: no answer is computed that has no place to go.
 *
 * @throws {InputError} `no-access` when it cannot
 */
export function checkedOut(path: string, flag = OUT): string {
  checkPlace({ path, field: flag });
  return path;
}
