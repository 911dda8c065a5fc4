import { expect, test } from 'vitest';
import { peak } from '../../src/math/peak.js';

test('peak: the top of a parabola between its samples is exact', () => {
  const parabola = (x: number): number => 7 - 3 * (x - 2.3) ** 2;
  expect(peak([0, 1, 2, 3, 4].map(parabola))).toBeCloseTo(7, 12);
});

test.each([
  { name: 'the first', values: [4, 2, 1] },
  { name: 'the last', values: [1, 2, 4] },
  { name: 'the only', values: [4] },
  { name: 'one of a level stretch', values: [4, 4, 4] },
])('peak: $name value is taken as it is', ({ values }) => expect(peak(values)).toBe(4));
