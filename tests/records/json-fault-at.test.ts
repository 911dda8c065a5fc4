import fc from 'fast-check';
import { expect, test } from 'vitest';
import '../arbitraries.js'; // its seed
import { jsonFaultAt } from '../../src/records/json-fault-at.js';

const jsonText = fc
  .tuple(fc.jsonValue(), fc.constantFrom(0, 2, '\t'))
  .map(([value, gap]) => JSON.stringify(value, null, gap));

test('jsonFaultAt: whatever JSON.stringify writes is read to its end', () => {
  fc.assert(fc.property(jsonText, (text) => jsonFaultAt(text) === text.length));
});

test('jsonFaultAt: what stands before the fault is not at fault', () => {
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
      const fault = jsonFaultAt(broken);
      expect(fault).toBeLessThanOrEqual(broken.length);
      // Node names a position in some messages; inside a text, ours is the start of that text.
      const named = /position (\d+)/.exec(messageOf(broken))?.[1];
      if (named !== undefined && broken[fault] !== '"') expect(fault).toBeLessThanOrEqual(Number(named));
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
  { text: '["a\tb"]', at: 1, source: 'RFC 8259 §7: control characters are escaped' },
])('jsonFaultAt: $text stops being JSON at $at ($source)', ({ text, at }) => {
  expect(isJson(text)).toBe(false);
  expect(jsonFaultAt(text)).toBe(at);
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
