import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../support/arbitraries.js'; // its seed
import { shortened, visible, visibleJson } from '../../src/base/visible.js';

// biome-ignore format: one text a line
describe('visible', () => {
  test.each([
    { name: 'a colour code loses the sign that starts it', text: '\u001b[31mred', want: ' [31mred' },
    { name: 'a C1 control is no better', text: 'a\u009b31mb', want: 'a 31mb' },
    { name: 'line ends and tabs become a blank', text: 'a\r\n\tb\u2028c', want: 'a b c' },
    { name: 'signs that turn text around are left out', text: 'a\u202eb\u2066c\u200fd\u061ce', want: 'abcde' },
    { name: 'signs without width are left out', text: 'a\u200b\u00ad\ufeff\u{e0041}b', want: 'ab' },
    { name: 'half a pair and code points that are no letters are replaced', text: 'a\ud800b\uffffc\ufdd0', want: 'a\ufffdb\ufffdc\ufffd' },
    { name: 'names of all scripts stay as they are', text: 'Jürgen ÅŁø 王 नि می\u200cخواهم 👩\u200d👧 ❤\ufe0f ½', want: 'Jürgen ÅŁø 王 नि می\u200cخواهم 👩\u200d👧 ❤\ufe0f ½' },
  ])('$name', ({ text, want }) => expect(visible(text)).toBe(want));
});

describe('visibleJson', () => {
  test('whatever it writes reads back as it was, and holds printed signs and line ends only', () => {
    fc.assert(
      fc.property(fc.jsonValue({ stringUnit: 'binary' }), fc.constantFrom(undefined, 2), (value, indent) => {
        const text = visibleJson(value, indent);
        expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
        expect(visible(text.replaceAll('\n', ''))).toBe(text.replaceAll('\n', ''));
      }),
    );
  });

  test('what cannot be seen is spelt out', () => {
    expect(visibleJson({ 'a\u202e': '\u009b\u{e0041}' })).toBe('{"a\\u202e":"\\u009b\\udb40\\udc41"}');
  });
});

test('shortened: a text of the wanted length stays whole, a longer one ends in dots', () => {
  expect(shortened('abcdef', 6)).toBe('abcdef');
  expect(shortened('abcdefg', 6)).toBe('abc...');
});
