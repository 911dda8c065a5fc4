import { eachKey } from '../../interview/prompt/each-key.js';
import type { Source } from './terminal.js';

/**
 * The next key that is one of those wanted, as a terminal sends it; null where keys come from no terminal, or no more come. The
 * terminal is left as it was, and what was pressed behind the key is left for whoever reads next.
 */
export async function nextKey(stdin: Source, isWanted: (key: string) => boolean): Promise<string | null> {
  if (!isRaw(stdin)) return null;
  stdin.setRawMode(true);
  stdin.resume();
  let onData = (_chunk: Buffer | string): void => {};
  let onEnd = (): void => {};
  let rest = '';
  try {
    return await new Promise<string | null>((resolve) => {
      onEnd = () => resolve(null);
      onData = (chunk) => {
        const keys = eachKey(chunk.toString());
        const place = keys.findIndex(isWanted);
        if (place < 0) return;
        rest = keys.slice(place + 1).join('');
        stdin.off('data', onData);
        resolve(keys[place]);
      };
      stdin.on('data', onData);
      stdin.once('end', onEnd);
    });
  } finally {
    stdin.off('data', onData).off('end', onEnd);
    stdin.setRawMode(false);
    stdin.pause();
    if (rest !== '') stdin.unshift(Buffer.from(rest));
  }
}

const isRaw = (stdin: Source): stdin is Source & { setRawMode(on: boolean): void } =>
  Boolean(stdin.isTTY) && 'setRawMode' in stdin;
