import { expect, test } from 'vitest';
import { UNITS, withUnit } from '../../../src/report/text/display-units.js';
import { inUnits } from '../../../src/report/text/units-in-text.js';

const { trade, metric } = UNITS;

test('tape: inches are given to the nearest sixteenth, in lowest terms', () => {
  expect([4.5, 2.3125, 6.74, 0.01].map(trade.tape.show)).toEqual(['4 1/2', '2 5/16', '6 3/4', '0']);
});

// Exact by the international agreement of 1959: 25.4 mm, 0.3048 m, 1.609344 km, 0.45359237 kg
// biome-ignore format: one quantity a line
test.each([
  ['lane', 60, '60.0 ft', '18.3 m'],
  ['speed', 17.5, '17.5 mph', '28.2 km/h'],
  ['tape', 4.5, '4 1/2 in', '114 mm'],
  ['roughTape', 3.4, '3 3/8 in', '86 mm'],
  ['bore', 31 / 32, '31/32 in', '24.6 mm'],
  ['flare', 4, '4.0 in', '102 mm'],
  ['gyration', 2.5, '2.500 in', '63.50 mm'],
  ['sharpness', 0.3048, '0.30 deg/ft', '1.00 deg/m'],
  ['weight', 15, '15.00 lb', '6.80 kg'],
  ['ounce', 3, '3.0 oz', '85 g'],
  ['boards', 12.34, '12.3 boards', '12.3 boards'],
] as const)('%s: %d is %s, or %s', (quantity, value, asTrade, asMetric) => {
  expect(withUnit(value, trade[quantity])).toBe(asTrade);
  expect(withUnit(value, metric[quantity])).toBe(asMetric);
});

// biome-ignore format: one sentence a line
test.each([
  ['Hook start 40.2 ft; wish 2 of 5 is 38 ft here.', 'Hook start 12.3 m; wish 2 of 5 is 11.6 m here.'],
  ['from 0.040 to 0.038 in, and 0.31 against 0.34 deg/ft', 'from 1.02 to 0.96 mm, and 1.02 against 1.12 deg/m'],
  ['a slug in a 1 1/4 in thumb bore', 'a slug in a 31.8 mm thumb bore'],
  ['±0.4 mph, ±15 rpm', '±0.64 km/h, ±15 rpm'],
  ['less than 1/4 in of ball is left', 'less than 6.35 mm of ball is left'],
  ['the usual 70 x 4 1/2 x 30 in 43 % of worlds', 'the usual 70 x 4 1/2 x 30 in 43 % of worlds'],
  ['in 9 of 10 worlds, 7 in the middle', 'in 9 of 10 worlds, 7 in the middle'],
  ['rolls from board 12 into the pocket', 'rolls from board 12 into the pocket'],
])('inUnits: %s', (text, want) => {
  expect(inUnits(text, metric)).toBe(want);
  expect(inUnits(text, trade)).toBe(text);
});
