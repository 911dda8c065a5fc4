import { expect, test } from 'vitest';
import { layoutsApart, pickDiffering } from '../../../src/search/candidates/pick-differing.js';
import { layoutAt } from '../../support/outcomes.js';

test('layouts count as different from 3/4 in, 25° of drilling angle or 15° of VAL angle on, or a mix of these', () => {
  const usual = layoutAt(50, 4.5, 35);
  expect(layoutsApart(usual, usual)).toBe(0);
  for (const other of [layoutAt(75, 4.5, 35), layoutAt(50, 5.25, 35), layoutAt(50, 4.5, 50)]) {
    expect(layoutsApart(usual, other)).toBeCloseTo(1, 12);
    expect(layoutsApart(other, usual)).toBeCloseTo(1, 12);
  }
  expect(layoutsApart(usual, layoutAt(75, 3.75, 20))).toBeCloseTo(Math.sqrt(3), 12);
  expect(layoutsApart(usual, layoutAt(62.5, 4.5, 42.5))).toBeCloseTo(Math.SQRT1_2, 12);
});

test('the best that differ are picked, best first, as many as are asked for', () => {
  const rows = [50, 55, 80, 85, 20].map((angle) => ({ layout: layoutAt(angle) }));
  const angles = (...args: [number, number?]) =>
    pickDiffering(rows, ...args).map(({ layout }) => layout.drillingAngleDeg);
  expect(angles(5)).toEqual([50, 80, 20]);
  expect(angles(2)).toEqual([50, 80]);
  expect(angles(0)).toEqual([]);
  expect(angles(5, 0.2)).toEqual([50, 55, 80, 85, 20]);
  expect(angles(5, 0.21)).toEqual([50, 80, 20]);
  expect(angles(3, 0)).toEqual([50, 55, 80]);
});
