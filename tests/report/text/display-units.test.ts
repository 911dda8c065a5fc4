import { expect, test } from 'vitest';
import { changeShown, givenWithUnit, UNITS, withUnit } from '../../../src/report/text/display-units.js';
import { withQuantities } from '../../../src/report/text/with-quantities.js';

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
  ['gyration', 2.5, '2.500 in', '2.500 in'],
  ['sharpness', 0.3048, '0.30 deg/ft', '1.00 deg/m'],
  ['weight', 15, '15.00 lb', '6.80 kg'],
  ['ounce', 3, '3.0 oz', '85 g'],
  ['boards', 12.34, '12.3 boards', '12.3 boards'],
] as const)('%s: %d is %s, or %s', (quantity, value, asTrade, asMetric) => {
  expect(withUnit(value, trade[quantity])).toBe(asTrade);
  expect(withUnit(value, metric[quantity])).toBe(asMetric);
});

test.each([
  ['weight', 15, '15 lb', '6.8 kg'],
  ['speed', 0.4, '0.4 mph', '0.64 km/h'],
  ['arc', 27, '27 in', '686 mm'],
  ['lane', 41.5, '41.5 ft', '12.6 m'],
  ['ounce', 3, '3 oz', '85 g'],
  ['speed', 27 / 1.609344, '16.8 mph', '27 km/h'], // given in km/h
  ['speed', 17.125, '17.125 mph', '27.6 km/h'],
  ['gyration', 2.5125, '2.513 in', '2.513 in'],
  ['gyration', 1.2 / 25.4, '0.047 in', '0.047 in'],
] as const)('%s as given: %d is %s, or %s', (quantity, value, asTrade, asMetric) => {
  expect(givenWithUnit(value, trade[quantity])).toBe(asTrade);
  expect(givenWithUnit(value, metric[quantity])).toBe(asMetric);
});

test.each([
  ['gyration', 0.0123, 0.0116, '0.012', '0.012', '0.000'], // -0.001 by the numbers themselves
  ['gyration', 0.0485, 0.0464, '0.049', '0.046', '-0.003'],
  ['weight', 15, 14.742, '6.80', '6.69', '-0.11'], // in kg; -0.12 by the numbers themselves
] as const)(
  '%s: the change from %d to %d is that of the numbers as shown',
  (quantity, before, after, ...want) => {
    const unit = metric[quantity];
    expect([unit.show(before), unit.show(after), changeShown(unit, before, after)]).toEqual(want);
  },
);

// biome-ignore format: one text a line
test.each([
  ['Hooks at {40.2 lane}, near {38 lane}.', 'Hooks at 40.2 ft, near 38 ft.', 'Hooks at 12.3 m, near 11.6 m.'],
  ['{0.038 to 0.040 gyration}, {0.31 sharpness}', '0.038 to 0.040 in, 0.31 deg/ft', '0.038 to 0.040 in, 1.02 deg/m'],
  ['a slug in a {1 1/4 bore} thumb bore', 'a slug in a 1 1/4 in thumb bore', 'a slug in a 31.8 mm thumb bore'],
  ['{8 to 26 speed}; {0.4 speed}', '8 to 26 mph; 0.4 mph', '12.87 to 41.84 km/h; 0.64 km/h'],
  ['must be {-3 to 6 tape}', 'must be -3 to 6 in', 'must be -76.2 to 152.4 mm'],
  ['the usual 70 x 4 1/2 x 30 in 43 % of worlds', 'the usual 70 x 4 1/2 x 30 in 43 % of worlds', 'the usual 70 x 4 1/2 x 30 in 43 % of worlds'],
  ['Old 14 lb spare, in 9 of 10 worlds', 'Old 14 lb spare, in 9 of 10 worlds', 'Old 14 lb spare, in 9 of 10 worlds'],
  ['rolls from board 12 into the pocket', 'rolls from board 12 into the pocket', 'rolls from board 12 into the pocket'],
])('withQuantities: %s', (text, asTrade, asMetric) => {
  expect(withQuantities(text, trade)).toBe(asTrade);
  expect(withQuantities(text, metric)).toBe(asMetric);
});
