import { chdtrc, compiled } from 'cephes';
import { beforeAll, expect, test } from 'vitest';
import { chanceOfMore } from '../../src/learn/chance-of-more.js';

beforeAll(() => compiled);

test.each([
  [0.5, 1],
  [3.84, 1],
  [2, 3],
  [11.3, 3],
  [7, 7],
  [18.5, 7],
  [21, 21],
  [38.9, 21],
])('chanceOfMore: %d with %d degrees of freedom is as cephes has it, to 0.01', (chiSquare, freedom) => {
  expect(Math.abs(chanceOfMore(chiSquare, freedom) - chdtrc(freedom, chiSquare))).toBeLessThan(0.01);
});
