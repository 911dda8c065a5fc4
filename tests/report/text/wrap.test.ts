import fc from 'fast-check';
import stringWidth from 'string-width';
import { expect, test } from 'vitest';
import { columnsOf, flow, wrap } from '../../../src/report/text/wrap.js';

test('columnsOf: counts what a terminal shows, not characters', () => {
  expect(columnsOf('pin')).toBe(3);
  expect(columnsOf('\u001b[1mpin\u001b[22m')).toBe(3);
  expect(columnsOf('球')).toBe(2); // East Asian Width W (Unicode Standard Annex 11)
  expect(columnsOf('e\u0301')).toBe(1); // a letter and its combining accent
});

test('columnsOf: takes each character, up to the signs of measures and money, as the general rule does', () => {
  for (let code = 0; code < 0x2200; code++) {
    const text = `a${String.fromCodePoint(code)}b`;
    expect(columnsOf(text), `U+${code.toString(16)}`).toBe(stringWidth(text));
  }
});

test('wrap: keeps every word in order and no line wider than asked', () => {
  const text = fc.array(fc.string({ minLength: 1, maxLength: 30 })).map((words) => words.join(' '));
  fc.assert(
    fc.property(text, fc.integer({ min: 12, max: 90 }), (words, width) => {
      const lines = wrap(words, width, '    ', '  * ');
      for (const line of lines) expect(columnsOf(line)).toBeLessThanOrEqual(width);
      const without = (s: string) => s.replace(/\s+/g, '');
      expect(without(lines.map((line) => line.slice(4)).join(''))).toBe(without(words));
    }),
  );
});

test('wrap: cuts a word that is longer than a line', () => {
  expect(wrap('abcdefgh', 5, '  ')).toEqual(['  abc', '  def', '  gh']);
});

test('wrap: does not part a mixed number or a layout', () => {
  expect(wrap('buffer 1 15/16 in', 10)).toEqual(['buffer', '1 15/16 in']);
  expect(wrap('score 51 % so', 8)).toEqual(['score', '51 % so']);
  expect(wrap('usual 45 x 4 1/2 x 45 too', 18)).toEqual(['usual', '45 x 4 1/2 x 45', 'too']);
});

test('flow: fills lines with whole items', () => {
  expect(flow(['one', 'two', 'three'], 12, '  ')).toEqual(['  one   two', '  three']);
});
