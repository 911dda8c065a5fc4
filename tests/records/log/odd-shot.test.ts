import { expect, test } from 'vitest';
import { oddShot } from '../../../src/records/log/odd-shot.js';

const shot = { laydownBoard: 20, arrowsBoard: 14, breakpointBoard: 8, pinsBoard: 17 };
const codes = (given: Partial<typeof shot & { confirmed: true }>, targetBoard?: number): string[] =>
  oddShot({ ...shot, ...given }, { targetBoard, readingErrors: undefined }, null).oddities.map(
    ({ code }) => code,
  );

test('oddShot: a shot over the arrows more than six boards from its target is questioned', () => {
  expect(codes({}, 14)).toEqual([]);
  expect(codes({}, 20)).toEqual([]);
  expect(codes({}, 20.5)).toEqual(['off-target']);
  expect(codes({}, 7.5)).toEqual(['off-target']);
});

test('oddShot: without a target, or a board at the arrows, there is nothing to compare', () => {
  expect(codes({})).toEqual([]);
  const { arrowsBoard: _, ...unread } = shot;
  expect(oddShot(unread, { targetBoard: 30, readingErrors: undefined }, null).oddities).toEqual([]);
});

test('oddShot: a path that no ball takes is said alone, since its target may be right', () => {
  const said = codes({ laydownBoard: 14, arrowsBoard: 20, breakpointBoard: 8 }, 5);
  expect(said.length).toBeGreaterThan(0);
  expect(said).not.toContain('off-target');
});

test('oddShot: a shot that was confirmed is not questioned again', () => {
  expect(codes({ confirmed: true }, 30)).toEqual([]);
});
