import { Transform } from 'node:stream';
import { StringDecoder } from 'node:string_decoder';
import type { KeypressEvent } from '@inquirer/core';
import { eachKey } from './each-key.js';

/** Signs under which keys are passed on that readline would wait after, or would act on by itself. It leaves these alone. */
const INSTEAD: Readonly<Record<string, string>> = {
  '\u001b': '\u0007', // Escape: ctrl-G
  '\u001a': '\u0018', // ctrl-Z: ctrl-X
  '\u0004': '\u0003', // ctrl-D leaves as ctrl-C does
  '\u0007': '',
  '\u0018': '',
  '\t': '',
};

/** Whether a key that readline read was Escape. */
export const isEscape = ({ ctrl, name }: KeypressEvent): boolean => ctrl && name === 'g';

/** Whether a key that readline read was ctrl-Z. */
export const isStop = ({ ctrl, name }: KeypressEvent): boolean => ctrl && name === 'x';

// biome-ignore-start lint/suspicious/noControlCharactersInRegex: keys come as control signs
/** Keys that readline reads as one; of others it would type a part. */
const IS_READ = /^(?:\P{Cc}|[\u0001-\u001a\u007f]|\u001b\[(?:\d{1,3}(?:;\d)?)?[A-Za-z~]|\u001bO[A-Za-z])$/u;

/** An incomplete escape sequence: it may arrive in pieces. */
const IS_OPEN = /\u001b(?:\[[0-9;?]*[ -/]*|O)?$/;
// biome-ignore-end lint/suspicious/noControlCharactersInRegex: keys come as control signs

/** How long the rest of an escape sequence may take, ms: far less than a person notices, far more than a terminal needs. */
const REST = 40;

/** What came in at once as keys that readline reads at once. Each Escape that nothing follows is one, however fast they come. */
export const keysIn = (chunk: string): readonly string[] =>
  eachKey(chunk)
    .map((key) => INSTEAD[key] ?? key)
    .filter((key) => IS_READ.test(key));

/**
 * Stands between a terminal and readline and passes on one key at a time, so that a prompt takes only its own and the next one
 * gets the rest. Readline alone waits half a second after an Escape, and joins several. The end of the input is ctrl-C.
 */
export function keysApart(): Transform {
  const decoder = new StringDecoder('utf8');
  let held = '';
  let timer: NodeJS.Timeout | undefined;
  const release = (): void => {
    const chunk = held;
    held = '';
    for (const key of keysIn(chunk)) apart.push(key);
  };
  const apart = new Transform({
    readableObjectMode: true,
    transform(chunk: Buffer, _encoding, done) {
      clearTimeout(timer);
      held += decoder.write(chunk);
      if (IS_OPEN.test(held)) timer = setTimeout(release, REST);
      else release();
      done();
    },
    flush(done) {
      clearTimeout(timer);
      release();
      done(null, '\u0003');
    },
  });
  return apart;
}
