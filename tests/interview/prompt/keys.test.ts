import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { marked } from '../../../src/interview/prompt/ask-choice.js';
import { EMPTY, edited, type Typed } from '../../../src/interview/prompt/edited.js';
import { type Key, keysIn, mayGoOn } from '../../../src/interview/prompt/keys.js';

const names = (chunk: string): readonly string[] =>
  keysIn(chunk).map((key) => (key.name === 'text' ? key.text : key.name));

describe('keysIn', () => {
  // biome-ignore format: one chunk a line
  test.each([
    { chunk: '\u001b\u001b\u001b', keys: ['escape', 'escape', 'escape'] },
    { chunk: '\u001b[A\u001bOB\u001b[B', keys: ['up', 'down', 'down'] },
    { chunk: '\u001b\u001b[A', keys: ['escape', 'up'] },
    { chunk: '17.5\r', keys: ['1', '7', '.', '5', 'enter'] },
    { chunk: '4½\u007f', keys: ['4', '½', 'erase'] },
    { chunk: '\u{1F3B3}?', keys: ['\u{1F3B3}', '?'] },
    { chunk: '\u0003\u001a\u0004', keys: ['leave', 'suspend', 'leave'] },
    { chunk: '\u001b[1;5C\u0001', keys: ['other', 'other'] },
  ])('$keys', ({ chunk, keys }) => {
    expect(names(chunk)).toEqual(keys);
  });

  test('no sign is lost, whatever comes in', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 40 }), (chunk) => {
        const typed = keysIn(chunk).flatMap((key) => (key.name === 'text' ? [key.text] : []));
        const printable = [...chunk].filter((sign) => !/\p{Cc}/u.test(sign));
        if (!chunk.includes('\u001b')) expect(typed).toEqual(printable);
      }),
      { numRuns: 500, seed: 3 },
    );
  });

  test('a lone Escape may be the beginning of a longer sequence, a whole one is not', () => {
    expect(['\u001b', '\u001b[', '\u001b[1;', '\u001bO', 'a\u001b'].map(mayGoOn)).toEqual([
      true,
      true,
      true,
      true,
      true,
    ]);
    expect(['\u001b[A', 'a', '', '\u001bOA'].map(mayGoOn)).toEqual([false, false, false, false]);
  });
});

describe('edited', () => {
  const after = (chunk: string, from: Typed = EMPTY): Typed => keysIn(chunk).reduce(edited, from);

  // biome-ignore format: one line a line
  test.each([
    { chunk: '17x\u007f.5', text: '17.5', at: 4 },
    { chunk: '75\u001b[D1', text: '715', at: 2 },
    { chunk: '15\u001b[H\u001b[3~', text: '5', at: 0 },
    { chunk: '123\u0015', text: '', at: 0 },
    { chunk: '\u007f\u001b[D\u001b[Ca', text: 'a', at: 1 },
    { chunk: 'ab\u001b[H\u001b[Fc', text: 'abc', at: 3 },
  ])('$chunk makes $text', ({ chunk, text, at }) => {
    const { signs, at: cursor } = after(chunk);
    expect(signs.join('')).toBe(text);
    expect(cursor).toBe(at);
  });
});

describe('marked', () => {
  const options = ['Right', 'Left', 'Axis tilt', 'Axis rotation', '3'].map((label) => ({ label }));
  const at = (keys: readonly Key[], from = 0): number =>
    keys.reduce((state, key) => marked(state, key, options), { at: from, typed: '' }).at;

  test('arrows stop at the ends', () => {
    expect(at([{ name: 'up' }])).toBe(0);
    expect(at([{ name: 'down' }, { name: 'down' }])).toBe(2);
    expect(at([{ name: 'end' }, { name: 'down' }])).toBe(4);
    expect(at([{ name: 'page-down' }, { name: 'home' }])).toBe(0);
  });

  test('letters find the line that begins with them, numbers the line of that place or name', () => {
    expect(at(keysIn('axis r'))).toBe(3);
    expect(at(keysIn('xl'))).toBe(1); // a letter that fits nothing does not stand in the way
    expect(at(keysIn('2'))).toBe(1);
    expect(at(keysIn('3'))).toBe(4);
    expect(at(keysIn('9'), 2)).toBe(2);
    expect(at(keysIn('0'), 2)).toBe(2);
  });

  test('a step’s number finds that step, not the line of that place', () => {
    const steps = [
      { label: 'No preference' },
      { label: 'Early', note: '2 of 5' },
      { label: 'Late', note: '4 of 5' },
    ];
    expect(marked({ at: 0, typed: '' }, { name: 'text', text: '4' }, steps).at).toBe(2);
    expect(marked({ at: 0, typed: '' }, { name: 'text', text: '3' }, steps).at).toBe(2);
    expect(marked({ at: 0, typed: '' }, { name: 'text', text: '2' }, steps).at).toBe(1);
  });
});
