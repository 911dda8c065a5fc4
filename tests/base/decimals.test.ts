import fc from 'fast-check';
import { expect, test } from 'vitest';
import { decimals, signed, toDigits } from '../../src/base/decimals.js';

test.each([
  [1.005, 2, '1.01'],
  [-1.005, 2, '-1.01'],
  [0.125, 2, '0.13'],
  [0.145, 2, '0.15'],
  [8.575, 2, '8.58'],
  [0.285, 2, '0.29'],
  [1.45, 1, '1.5'],
  [0.5, 0, '1'],
  [2.5, 0, '3'],
  [115 / 128, 2, '0.90'],
  [1.0049, 2, '1.00'],
  [1e-7, 3, '0.000'],
  [-1e-7, 3, '0.000'],
  [1e21, 1, '1e+21'],
  [Number.NaN, 1, 'NaN'],
  [Number.POSITIVE_INFINITY, 1, 'Infinity'],
])('decimals: %s with %s decimals is %s (by hand: halves away from zero)', (value, digits, text) => {
  expect(decimals(value, digits)).toBe(text);
});

test('decimals: a number typed with a last digit of 5 is rounded away from zero, whatever its double', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 999_999 }),
      fc.integer({ min: 0, max: 4 }),
      fc.constantFrom('', '-'),
      (count, digits, sign) => {
        const typed = Number(`${sign}${count}5e${-digits - 1}`); // one decimal more than is shown
        const away = Number(`${count + 1}e${-digits}`).toFixed(digits);
        expect(decimals(typed, digits)).toBe(`${sign}${away}`);
      },
    ),
  );
});

test('signed and toDigits round alike', () => {
  expect(signed(1.005, 2)).toBe('+1.01');
  expect(signed(-0.0004, 2)).toBe('0.00');
  expect(toDigits(1.005, 2)).toBe(1.01);
});
