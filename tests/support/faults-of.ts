import { InputError } from '../../src/base/errors.js';

/** The InputError a reader throws; fails loudly when it throws another error, or none. */
export function inputErrorOf(read: () => unknown): InputError {
  try {
    read();
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
  throw new Error('nothing was thrown');
}
