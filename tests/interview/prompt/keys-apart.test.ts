import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { isEscape, isStop, keysApart } from '../../../src/interview/prompt/keys-apart.js';
import { readKeys } from '../../support/interview/read-keys.js';

const names = (chunk: string): readonly string[] =>
  readKeys(chunk).keys.map((key) => {
    if (isEscape(key)) return 'escape';
    if (isStop(key)) return 'stop';
    return key.sign === '' ? `${key.ctrl ? 'ctrl-' : ''}${key.name}` : key.sign;
  });

describe('keysIn', () => {
  // biome-ignore format: one chunk a line
  test.each([
    { chunk: '\u001b\u001b\u001b', keys: ['escape', 'escape', 'escape'] },
    { chunk: '\u001b[A\u001bOB\u001b[B', keys: ['up', 'down', 'down'] },
    { chunk: '\u001b\u001b[A', keys: ['escape', 'up'] },
    { chunk: '\u001b[5~\u001b[6~\u001b[1~\u001bOF\u001b[3~', keys: ['pageup', 'pagedown', 'home', 'end', 'delete'] },
    { chunk: '17.5\r', keys: ['1', '7', '.', '5', 'return'] },
    { chunk: '4½\u007f', keys: ['4', '½', 'backspace'] },
    { chunk: '\u{1F3B3}?', keys: ['\u{1F3B3}', '?'] },
    { chunk: '\u0003\u001a\u0004', keys: ['ctrl-c', 'stop', 'ctrl-c'] },
    { chunk: '\u001b[1;5C\u0001', keys: ['ctrl-right', 'ctrl-a'] },
    { chunk: '\u0007\u0018\t\u0000\u001f\u009b', keys: [] },
    { chunk: '\u001b[?1;2cx\u001b[1234~y', keys: ['x', 'y'] },
  ])('$keys', ({ chunk, keys }) => {
    expect(names(chunk)).toEqual(keys);
  });

  test('no sign is lost, whatever comes in', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 40 }), (chunk) => {
        const typed = readKeys(chunk).keys.flatMap(({ sign }) => (sign === '' ? [] : [sign]));
        const printable = [...chunk].filter((sign) => !/\p{Cc}/u.test(sign));
        if (!chunk.includes('\u001b')) expect(typed).toEqual(printable);
      }),
      { numRuns: 500, seed: 3 },
    );
  });

  // biome-ignore format: one line a line
  test.each([
    { chunk: '17x\u007f.5', text: '17.5', at: 4 },
    { chunk: '75\u001b[D1', text: '715', at: 2 },
    { chunk: '15\u001b[H\u001b[3~', text: '5', at: 0 },
    { chunk: '123\u0015', text: '', at: 0 },
    { chunk: '\u007f\u001b[D\u001b[Ca', text: 'a', at: 1 },
    { chunk: 'ab\u001b[H\u001b[Fc', text: 'abc', at: 3 },
  ])('$chunk makes $text', ({ chunk, text, at }) => {
    const { line, cursor } = readKeys(chunk);
    expect(line).toBe(text);
    expect(cursor).toBe(at);
  });
});

describe('keysApart', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  /** What can be read once some chunks have come in, one right after the other. */
  function readerOf(chunks: readonly (string | Buffer)[]) {
    const apart = keysApart();
    for (const chunk of chunks) apart.write(chunk);
    return (): readonly string[] => {
      const keys: string[] = [];
      for (let key = apart.read(); key !== null; key = apart.read()) keys.push(key);
      return keys;
    };
  }

  test.each([
    [['\u001b', '[A'], ['\u001b[A']],
    [['\u001b[', 'A'], ['\u001b[A']],
    [['\u001b[1;', '5C'], ['\u001b[1;5C']],
    [['\u001bO', 'A'], ['\u001bOA']],
    [
      ['a\u001b', '[A'],
      ['a', '\u001b[A'],
    ],
  ])('%j comes in pieces and is whole once the rest is there', (chunks, keys) => {
    expect(readerOf(chunks.slice(0, 1))()).toEqual([]);
    expect(readerOf(chunks)()).toEqual(keys);
  });

  test('a lone Escape is passed on within 50 ms, a whole sequence and a sign at once', () => {
    const read = readerOf(['\u001b']);
    expect(read()).toEqual([]);
    vi.advanceTimersByTime(50);
    expect(read()).toEqual(['\u0007']);
    for (const whole of ['\u001b[A', 'a', '\u001bOA']) expect(readerOf([whole])()).toEqual([whole]);
    expect(readerOf([''])()).toEqual([]);
  });

  test('a sign whose bytes come apart is one', () => {
    const [first, second] = Buffer.from('½');
    expect(readerOf([Buffer.from([first as number]), Buffer.from([second as number])])()).toEqual(['½']);
  });

  test('the end of the input leaves', () => {
    const apart = keysApart();
    apart.end('1');
    expect([apart.read(), apart.read(), apart.read()]).toEqual(['1', '\u0003', null]);
  });
});
