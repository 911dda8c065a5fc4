import fc from 'fast-check';
import { expect, test } from 'vitest';
import '../../support/arbitraries.js'; // its seed
import { jsonFault, MOST_DEPTH } from '../../../src/records/read/json-fault.js';

const jsonText = fc
  .tuple(fc.jsonValue(), fc.constantFrom(0, 2, '\t'))
  .map(([value, gap]) => JSON.stringify(value, null, gap));

test('jsonFault: whatever JSON.stringify writes is read to its end', () => {
  fc.assert(fc.property(jsonText, (text) => jsonFault(text) === null));
});

test('jsonFault: what stands before the fault is not at fault', () => {
  const spoilt = fc.tuple(
    jsonText,
    fc.nat(),
    fc.constantFrom('}', ']', ',', ':', "'", '/', '"', 'x', '\u0000'),
  );
  fc.assert(
    fc.property(spoilt, ([text, place, sign]) => {
      const at = place % (text.length + 1);
      const broken = text.slice(0, at) + sign + text.slice(at);
      fc.pre(!isJson(broken));
      const fault = jsonFault(broken)?.at ?? Number.NaN;
      expect(fault).toBeLessThanOrEqual(broken.length);
      // Node names a position in some messages
      const named = /position (\d+)/.exec(messageOf(broken))?.[1];
      if (named !== undefined) expect(fault).toBeLessThanOrEqual(Number(named));
    }),
  );
});

// biome-ignore format: one text a line
test.each([
  { text: '{"a": }', at: 6, source: 'RFC 8259 §4: a value belongs there' },
  { text: '{"a": 1,}', at: 8, source: 'RFC 8259 §4: no comma after the last member' },
  { text: '[1, 2', at: 5, source: 'RFC 8259 §5: ends too soon' },
  { text: '{a: 1}', at: 1, source: 'RFC 8259 §4: names are strings' },
  { text: '[01]', at: 2, source: 'RFC 8259 §6: no leading zeros' },
  { text: '{} {}', at: 3, source: 'RFC 8259 §2: one value' },
  { text: '["a\tb"]', at: 3, source: 'RFC 8259 §7: control characters are escaped' },
  { text: '["a\\q"]', at: 3, source: 'RFC 8259 §7: nine escapes' },
  { text: '["\\u00g0"]', at: 2, source: 'RFC 8259 §7: four hex digits' },
  { text: '["a', at: 3, source: 'RFC 8259 §7: ends too soon' },
  { text: '[1.]', at: 2, source: 'RFC 8259 §6: digits behind the point' },
  { text: '[-]', at: 1, source: 'RFC 8259 §6: digits behind the minus' },
  { text: '[1}', at: 2, source: 'RFC 8259 §5: closed by its own bracket' },
])('jsonFault: $text stops being JSON at $at ($source)', ({ text, at }) => {
  expect(isJson(text)).toBe(false);
  expect(jsonFault(text)).toEqual({ kind: 'syntax', at });
});

// biome-ignore format: one text a line
test.each([
  { text: '{"a": 1, "a": 2}', at: 9 },
  { text: '{"b": {"a": 1}, "a": [{"c": 1, "d": 2, "c": 3}]}', at: 39 },
  { text: '{"a": 1, "\\u0061": 2}', at: 9 },
  { text: '{"__proto__": 1, "__proto__": 2}', at: 17 },
])('jsonFault: $text names a field a second time at $at', ({ text, at }) => {
  expect(jsonFault(text)).toEqual({ kind: 'twice', at });
});

test('jsonFault: the same name in objects beside and within one another is no fault', () =>
  expect(jsonFault('[{"a": 1}, {"a": {"a": 2}}]')).toBeNull());

test('jsonFault: as deep as is read, and one deeper', () => {
  const deep = (levels: number): string => '['.repeat(levels) + ']'.repeat(levels);
  expect(jsonFault(deep(MOST_DEPTH))).toBeNull();
  expect(jsonFault(deep(MOST_DEPTH + 1))).toEqual({ kind: 'deep', at: MOST_DEPTH });
  expect(jsonFault('{"a":'.repeat(1_000_000))).toMatchObject({ kind: 'deep' });
});

test('jsonFault: tokens of ten megabytes are read', () => {
  const long = 10_000_000;
  const escapes = '\\u0061'.repeat(long / 6);
  const digits = '1'.repeat(long);
  expect(jsonFault(`["${escapes}", ${digits}, 1.${digits}e${digits}${' '.repeat(long)}]`)).toBeNull();
  expect(jsonFault(`["${'x'.repeat(long)}]`)).toEqual({ kind: 'syntax', at: long + 3 });
});

const messageOf = (text: string): string => {
  try {
    JSON.parse(text);
    return '';
  } catch (error) {
    return (error as Error).message;
  }
};
const isJson = (text: string): boolean => messageOf(text) === '';
