import type { Key } from './keys.js';

/** A line that is being typed; the cursor stands before the sign at `at`. */
export interface Typed {
  readonly signs: readonly string[];
  readonly at: number;
}

export const EMPTY: Typed = { signs: [], at: 0 };

/** The line after a key that types or edits; the same line after any other. */
export function edited({ signs, at }: Typed, key: Key): Typed {
  switch (key.name) {
    case 'text':
      return { signs: [...signs.slice(0, at), key.text, ...signs.slice(at)], at: at + 1 };
    case 'erase':
      return at === 0
        ? { signs, at }
        : { signs: [...signs.slice(0, at - 1), ...signs.slice(at)], at: at - 1 };
    case 'delete':
      return { signs: [...signs.slice(0, at), ...signs.slice(at + 1)], at };
    case 'clear':
      return EMPTY;
    case 'left':
      return { signs, at: Math.max(0, at - 1) };
    case 'right':
      return { signs, at: Math.min(signs.length, at + 1) };
    case 'home':
      return { signs, at: 0 };
    case 'end':
      return { signs, at: signs.length };
    default:
      return { signs, at };
  }
}
