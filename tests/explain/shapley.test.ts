import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mixtures, shapleyShares } from '../../src/explain/shapley.js';

const eight = fc.array(fc.double({ min: -100, max: 100, noNaN: true }), { minLength: 8, maxLength: 8 });

test('shapleyShares: shares add up to the whole change (efficiency axiom)', () => {
  fc.assert(
    fc.property(eight, (values) => {
      const [a, b, c] = shapleyShares(values);
      expect(a + b + c).toBeCloseTo(values[7] - values[0], 9);
    }),
  );
});

test('shapleyShares: a number that never changes the value gets nothing (null player axiom)', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: -9, max: 9, noNaN: true }), { minLength: 4, maxLength: 4 }),
      (four) => {
        const values = Array.from({ length: 8 }, (_, mask) => four[mask >> 1]);
        expect(shapleyShares(values)[0]).toBeCloseTo(0, 12);
      },
    ),
  );
});

test('shapleyShares: three orders of a worked game, by averaging all six orders of arrival', () => {
  const values = [0, 1, 2, 7, 0, 4, 3, 12];
  const orders = [
    [0, 1, 2],
    [0, 2, 1],
    [1, 0, 2],
    [1, 2, 0],
    [2, 0, 1],
    [2, 1, 0],
  ];
  const sum = [0, 0, 0];
  for (const order of orders) {
    let mask = 0;
    for (const player of order) {
      sum[player] += values[mask | (1 << player)] - values[mask];
      mask |= 1 << player;
    }
  }
  const [a, b, c] = shapleyShares(values);
  expect([a, b, c].map((v) => v * 6)).toEqual(sum.map((v) => expect.closeTo(v, 12)));
});

test('mixtures: bit 0 takes the drilling angle, bit 1 pin-to-PAP, bit 2 the VAL angle', () => {
  const low = { drillingAngleDeg: 10, pinToPapIn: 3, valAngleDeg: 20 };
  const high = { drillingAngleDeg: 90, pinToPapIn: 5, valAngleDeg: 70 };
  const mixed = mixtures(low, high);
  expect(mixed[0]).toEqual(low);
  expect(mixed[7]).toEqual(high);
  expect(mixed[0b101]).toEqual({ drillingAngleDeg: 90, pinToPapIn: 3, valAngleDeg: 70 });
});
