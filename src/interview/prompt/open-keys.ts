import type { Readable } from 'node:stream';
import { StringDecoder } from 'node:string_decoder';
import { type Key, keysIn, mayGoOn } from './keys.js';

/** A terminal's input, or what stands for it in a test. */
export type KeyInput = Readable & { readonly isTTY?: boolean; setRawMode?(mode: boolean): unknown };

/** Keys as they are pressed. None is lost between questions. */
export interface Keys {
  /** The next key; one that was pressed before it was asked for at once. */
  next(): Promise<Key>;
  /** Gives the terminal back as it was. */
  close(): void;
}

/** How long the rest of an escape sequence may take, ms: far less than a person notices, far more than a terminal needs. */
const REST = 40;

/**
 * Reads keys until it is closed.
 *
 * Ctrl-Z stops this program and all that run with it, as the terminal would do it, and hands the terminal to the shell as it was.
 *
 * @param onResumed  called when the program goes on after it was stopped: what was on the screen may be gone
 */
export function openKeys(input: KeyInput, onResumed: () => void): Keys {
  const decoder = new StringDecoder('utf8');
  const pressed: Key[] = [];
  const waiting: ((key: Key) => void)[] = [];
  let held = '';
  let timer: NodeJS.Timeout | undefined;

  const press = (key: Key): void => {
    if (key.name === 'suspend') {
      if (process.platform !== 'win32') stop();
      return;
    }
    const resolve = waiting.shift();
    if (resolve) resolve(key);
    else pressed.push(key);
  };
  const flush = (): void => {
    const chunk = held;
    held = '';
    for (const key of keysIn(chunk)) press(key);
  };
  const onData = (data: Buffer | string): void => {
    clearTimeout(timer);
    held += typeof data === 'string' ? data : decoder.write(data);
    if (mayGoOn(held)) timer = setTimeout(flush, REST);
    else flush();
  };
  const onEnd = (): void => {
    flush();
    press({ name: 'end-of-input' });
  };
  const raw = (mode: boolean): void => {
    if (input.isTTY) input.setRawMode?.(mode);
  };
  const stop = (): void => {
    raw(false);
    process.kill(0, 'SIGTSTP');
  };
  const onContinued = (): void => {
    raw(false); // the shell may have changed the terminal, which is not seen here
    raw(true);
    input.resume();
    onResumed();
  };

  raw(true);
  input.on('data', onData).on('end', onEnd);
  process.on('SIGCONT', onContinued);
  input.resume();
  return {
    next: () => {
      const key = pressed.shift();
      return key ? Promise.resolve(key) : new Promise((resolve) => waiting.push(resolve));
    },
    close: () => {
      clearTimeout(timer);
      process.off('SIGCONT', onContinued);
      input.off('data', onData).off('end', onEnd);
      input.pause();
      raw(false);
    },
  };
}
