import { emitKeypressEvents, type Key } from 'node:readline';
import type { Source } from './terminal.js';

/** The next key that is pressed; null where keys come from no terminal. The terminal is left as it was. */
export async function nextKey(stdin: Source): Promise<Key | null> {
  if (!isRaw(stdin)) return null;
  emitKeypressEvents(stdin);
  stdin.setRawMode(true);
  stdin.resume();
  try {
    return await new Promise<Key | null>((resolve) => {
      stdin.once('keypress', (_text: string, key: Key) => resolve(key));
      stdin.once('end', () => resolve(null));
    });
  } finally {
    stdin.setRawMode(false);
    stdin.pause();
  }
}

const isRaw = (stdin: Source): stdin is Source & { setRawMode(on: boolean): void } =>
  Boolean(stdin.isTTY) && 'setRawMode' in stdin;
