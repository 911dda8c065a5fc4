import fc from 'fast-check';
import { expect, test } from 'vitest';
import '../../support/arbitraries.js'; // its seed
import { nearestWord } from '../../../src/records/text/nearest-word.js';

const KNOWN = ['speedMph', 'revRateRpm', 'hand', 'pap'];

test.each([
  { word: 'speedMhp', want: 'speedMph' },
  { word: 'revrate', want: 'revRateRpm' },
  { word: 'speed', want: 'speedMph' },
  { word: 'Hand', want: 'hand' },
  { word: 'colour', want: null },
  { word: 'pxp', want: 'pap' },
  { word: 'exp', want: null }, // two letters of three differ from pap
])('nearestWord: $word is meant for $want', ({ word, want }) => {
  expect(nearestWord(word, KNOWN)).toBe(want);
});

test('nearestWord: one slip in a word of five letters and more is always found', () => {
  const slip = fc.tuple(fc.constantFrom('speedMph', 'revRateRpm'), fc.nat(), fc.constantFrom('', 'q'));
  fc.assert(
    fc.property(slip, ([word, place, letter]) => {
      const at = place % word.length;
      expect(nearestWord(word.slice(0, at) + letter + word.slice(at + 1), KNOWN)).toBe(word);
    }),
  );
});

test('nearestWord: of no words none is near', () => {
  expect(nearestWord('hand', [])).toBeNull();
});
