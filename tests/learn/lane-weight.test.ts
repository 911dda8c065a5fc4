import { expect, test } from 'vitest';
import { LANES_ALIKE, laneWeight } from '../../src/learn/lane-weight.js';

const LANES = [0, 1, 2, 3, 4];

test('laneWeight: each lane has variance one, any two are equally alike, and the first depends on its own number alone', () => {
  const rows = LANES.map((lane) => LANES.map((of) => laneWeight(lane, of)));
  expect(rows[0]).toEqual([1, 0, 0, 0, 0]); // to the last bit: one lane alone is fitted as if there were no others
  for (const [i, a] of rows.entries())
    for (const [j, b] of rows.entries()) {
      const covariance = a.reduce((sum, each, of) => sum + each * b[of], 0);
      expect(covariance).toBeCloseTo(i === j ? 1 : LANES_ALIKE, 12);
    }
});
