import { expect, test } from 'vitest';
import { widestGapIn } from '../../../src/report/tables/rings-table.js';

const RADIUS_IN = 27 / (2 * Math.PI);

test('widestGapIn: a quarter circle away is a quarter of the circumference', () => {
  const pole = { turn: 0, fromFt: 0, points: [{ overIn: 0, upIn: 0 }] };
  const away = { turn: 1, fromFt: 4, points: [{ overIn: (RADIUS_IN * Math.PI) / 2, upIn: 0 }] };
  expect(widestGapIn(pole, away)).toBeCloseTo(27 / 4, 12); // closed form
});

test('widestGapIn: a ring does not lie apart from itself', () => {
  const ring = {
    turn: 0,
    fromFt: 0,
    points: [
      { overIn: 1, upIn: 2 },
      { overIn: -3, upIn: 0.5 },
    ],
  };
  expect(widestGapIn(ring, ring)).toBe(0);
});
