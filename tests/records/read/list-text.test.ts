import { afterAll, expect, test } from 'vitest';
import { type GuessedEncoding, readListText } from '../../../src/records/read/list-text.js';
import { LIST_FILE } from '../../../src/records/read/read-file.js';
import { fromWindows1252 } from '../../../src/records/text/windows-1252.js';
import { scratchFolder } from '../../support/demo-files.js';
import { inputErrorOf } from '../../support/faults-of.js';
import { readBowlerList } from '../../support/read-bowler-list.js';

const folder = scratchFolder();
afterAll(() => folder.remove());

function read(name: string, bytes: Uint8Array | string): { text: string; guesses: GuessedEncoding[] } {
  const guesses: GuessedEncoding[] = [];
  const text = readListText(folder.write(name, bytes), LIST_FILE, (guess) => guesses.push(guess));
  return { text, guesses };
}

/** Bytes and code points of the Unicode Consortium's table CP1252.TXT, one from each part of it. */
test.each([
  [0x41, 0x0041],
  [0x80, 0x20ac],
  [0x85, 0x2026],
  [0x8a, 0x0160],
  [0x8e, 0x017d],
  [0x91, 0x2018],
  [0x92, 0x2019],
  [0x96, 0x2013],
  [0x9c, 0x0153],
  [0x9e, 0x017e],
  [0x9f, 0x0178],
  [0xa0, 0x00a0],
  [0xe9, 0x00e9],
  [0xff, 0x00ff],
])('fromWindows1252: byte %i is U+%i', (byte, point) => {
  expect(fromWindows1252(Uint8Array.of(byte))).toBe(String.fromCodePoint(point));
});

test.each([0x81, 0x8d, 0x8f, 0x90, 0x9d, 0x00, 0x07, 0x7f])(
  'fromWindows1252: byte %i stands for nothing in a text',
  (byte) => {
    expect(fromWindows1252(Uint8Array.of(0x41, byte))).toBeNull();
  },
);

const list =
  'name;hand;thumbHole;speedMph;revRateRpm;speedMph ±\r\nJürgen Müller;right;yes;17;320;1\r\nKim;left;no;18;400;\r\n';

test('readListText: a list that a spreadsheet saved as Windows-1252 is read, and the names to check are handed on', () => {
  const { text, guesses } = read('old.csv', Buffer.from(list, 'latin1'));
  expect(text).toBe(list);
  expect(guesses).toEqual([{ path: expect.stringContaining('old.csv'), cells: ['Jürgen Müller'] }]);
  expect(readBowlerList(text, 'old.csv').map(({ name }) => name)).toEqual(['Jürgen Müller', 'Kim']);
});

test('readListText: nothing is guessed of a list in UTF-8', () => {
  expect(read('new.csv', `\ufeff${list}`)).toEqual({ text: list, guesses: [] });
});

test('readListText: what is text in neither encoding is refused as before', () => {
  expect(inputErrorOf(() => read('odd.csv', Uint8Array.of(0x41, 0x0a, 0x8d)))).toMatchObject({
    code: 'not-utf8',
    faults: [{ got: 'other bytes in line 2' }],
  });
});
