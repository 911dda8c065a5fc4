import { InputError } from './errors.js';

/**
 * Loads a package that only some answers need.
 *
 * @param load    its dynamic import
 * @param what    what needs it, as the start of a sentence
 * @param remedy  what to do without it
 * @throws {InputError} `missing-package` when it is not installed, or not for this machine
 */
export async function neededPackage<T>(
  name: string,
  load: () => Promise<T>,
  what: string,
  remedy: string,
): Promise<T> {
  try {
    return await load();
  } catch {
    throw new InputError('missing-package', {
      field: what,
      rule: `needs the package ${name}`,
      got: 'none that loads on this machine',
      hint: remedy,
    });
  }
}
