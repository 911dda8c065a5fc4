import { expect, test } from 'vitest';
import { wildShots } from '../../../src/records/log/wild-shots.js';
import type { Night } from '../../../src/records/schemas/shot-log.js';

const night = (boards: readonly number[], of: 'pinsBoard' | 'breakpointBoard' = 'pinsBoard'): Night => ({
  lane: 'dry',
  shots: boards.map((board) => ({ [of]: board })),
});

test('wildShots: one shot far from six is named with the middle', () => {
  expect(wildShots(night([17, 17, 18, 16, 17, 28, 17]), 11)).toEqual([
    { code: 'wild-shot', params: { shot: 16, reading: 'pinsBoard', value: 28, median: 17, shots: 7 } },
  ]);
});

/*
 * Readings 1, 1, 2, 2, 4, 6, 9: median 2, absolute deviations 1, 1, 0, 0, 2, 4, 7, median of these 1 (the usual worked example of the
 * median absolute deviation). 1.4826 times that, 3.5 times over, is 5.19 from the median: 9 lies beyond, 6 does not.
 */
test('wildShots: goes by the median absolute deviation', () => {
  expect(wildShots(night([1, 1, 2, 2, 4, 6, 9]), 1).map(({ params }) => params.value)).toEqual([9]);
});

test('wildShots: two wild shots do not hide one another', () => {
  const found = wildShots(night([17, 17.5, 16.5, 17, 18, 17, 30, 31]), 1);
  expect(found.map(({ params }) => params.shot)).toEqual([7, 8]);
});

test('wildShots: shots that are all alike scatter by what readings may be off', () => {
  expect(wildShots(night([17, 17, 17, 17, 18.5]), 1)).toEqual([]); // 3 × 0.5 boards
  expect(wildShots(night([17, 17, 17, 17, 19]), 1)).toHaveLength(1); // 4 × 0.5 boards
  expect(wildShots(night([8, 8, 8, 8, 10], 'breakpointBoard'), 1)).toEqual([]); // 2 × 1 board
});

test('wildShots: of four shots or less none is', () => {
  expect(wildShots(night([17, 17, 17, 39]), 1)).toEqual([]);
});
