import { createInterface } from 'node:readline';
import { PassThrough } from 'node:stream';
import type { KeypressEvent } from '@inquirer/core';
import { keysIn } from '../../../src/interview/prompt/keys-apart.js';

/** A key as readline reads it, and the sign that it types; no sign for one that does something else. */
type ReadKey = KeypressEvent & { readonly sign: string };

/** What readline makes of keys that come in at once, without waiting for any: each of them, and the line that they type. */
export function readKeys(chunk: string): {
  readonly keys: readonly ReadKey[];
  readonly line: string;
  readonly cursor: number;
} {
  const input = new PassThrough({ readableObjectMode: true });
  const reader = createInterface({ input, output: new PassThrough(), terminal: true });
  reader.on('SIGINT', () => {}); // would close it
  const keys: ReadKey[] = [];
  input.on('keypress', (sign: string | undefined, key: KeypressEvent) => {
    keys.push({ ...key, sign: sign === undefined || /\p{Cc}/u.test(sign) ? '' : sign });
  });
  for (const key of keysIn(chunk)) input.emit('data', key);
  const { line, cursor } = reader;
  reader.close();
  return { keys, line, cursor };
}
