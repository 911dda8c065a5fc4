import { InputError } from '../../base/errors.js';
import { Refusal } from '../../records/refusals/refusal.js';

/** What the person can mend, with words or as data. */
export type Mendable = InputError | Refusal;

export const isMendable = (error: unknown): error is Mendable =>
  error instanceof InputError || error instanceof Refusal;

/** Several things to mend at once, from the command line and from files. */
export class InputErrors extends Error {
  override readonly name = 'InputErrors';

  constructor(readonly errors: readonly Mendable[]) {
    super(errors.map((error) => error.message).join('\n'));
  }
}

/**
 * Runs every reader and returns what each read, by name.
 *
 * A person who mistyped two flags and one file hears of all three at once, not one per attempt. Readers may call it in turn.
 *
 * @throws {InputErrors} every `InputError` and `Refusal` of the readers; any other error at once, as it is a bug
 */
export function collectFaults<T extends Record<string, () => unknown>>(
  readers: T,
): { [K in keyof T]: ReturnType<T[K]> } {
  const errors: Mendable[] = [];
  const read = Object.entries(readers).map(([name, reader]) => {
    try {
      return [name, reader()];
    } catch (error) {
      if (error instanceof InputErrors) errors.push(...error.errors);
      else if (isMendable(error)) errors.push(error);
      else throw error;
      return [name, undefined];
    }
  });
  if (errors.length > 0) throw new InputErrors(errors);
  return Object.fromEntries(read) as { [K in keyof T]: ReturnType<T[K]> };
}

/** The same of a list, one reader for all: what it reads of each, in order. */
export function collectAll<G, T>(given: readonly G[], read: (each: G) => T): readonly T[] {
  const all = collectFaults(Object.fromEntries(given.map((each, i) => [String(i), () => read(each)])));
  return given.map((_, i) => all[i]);
}
