import { expect, test } from 'vitest';
import { parseQuantity } from '../../../src/records/text/parse-quantity.js';

// factors exact by definition: 25.4 mm, 1.609344 km, 0.45359237 kg
// biome-ignore format: one answer a line
test.each([
  ['4 7/8', 'in', 'in', 4.875],
  ['1/4 down', 'in', 'in', -0.25],
  ['1/4 in down', 'in', 'in', -0.25],
  ['127', 'mm', 'in', 5],
  ['127mm', 'in', 'in', 5],
  ['12.7 cm', 'in', 'in', 5],
  ['-12.7', 'mm', 'in', -0.5],
  ['12.7 mm down', 'mm', 'in', -0.5],
  ['5"', 'mm', 'in', 5],
  ['32.18688 km/h', 'mph', 'mph', 20],
  ['20 mph', 'km/h', 'mph', 20],
  ['6.80388555', 'kg', 'lb', 15],
  ['15 lb', 'kg', 'lb', 15],
  ['18.288 m', 'ft', 'ft', 60],
])('%j, asked for in %s, is %s: %d', (text, bare, wanted, want) => {
  expect(parseQuantity(text, bare, wanted)).toBeCloseTo(want, 12);
});

test.each(['', 'fast', '20 kg', '20 furlongs', '-5 mm down', 'mm', '5 mm mm'])('%j is no length', (text) => {
  expect(parseQuantity(text, 'mm', 'in')).toBeNaN();
});
