import { describe, expect, test } from 'vitest';
import {
  COMPARED_IDS,
  LANE_IDS,
  NUMBER_OF_WISH,
  REACTION_IDS,
  REACTION_NUMBERS,
  SHARED_IDS,
  WISHED_IDS,
  WISHES,
  wishEnds,
  wishWords,
} from '../../../src/records/schemas/reaction-numbers.js';
import { wantSchema } from '../../../src/records/schemas/want.js';

describe('the reaction numbers', () => {
  test('each has a name of its own; those that are compared have heads and units of their own', () => {
    expect(new Set(REACTION_IDS.map((id) => REACTION_NUMBERS[id].name)).size).toBe(REACTION_IDS.length);
    const heads = COMPARED_IDS.map((id) => REACTION_NUMBERS[id].compared);
    expect(new Set(heads.map(({ row }) => row)).size).toBe(heads.length);
    expect(new Set(heads.map(({ short }) => short)).size).toBe(heads.length);
  });

  test('what stands in a list has what the list is of, in the order of the table', () => {
    expect(COMPARED_IDS).toEqual([
      'hookStartFt',
      'sharpnessDegPerFt',
      'totalHookBoards',
      'entryAngleDeg',
      'flareIn',
    ]);
    expect(LANE_IDS).toEqual(COMPARED_IDS.filter((id) => id !== 'flareIn'));
    expect(SHARED_IDS).toEqual(COMPARED_IDS.filter((id) => id !== 'entryAngleDeg'));
    expect(WISHED_IDS).toEqual(['hookStartFt', 'sharpnessDegPerFt', 'totalHookBoards']);
  });
});

describe('the wishes', () => {
  test('each is answered by the number in whose entry it stands, and is one that may be wanted', () => {
    expect(WISHES).toEqual(['hookStart', 'sharpness', 'totalHook']);
    for (const wish of WISHES) expect(REACTION_NUMBERS[NUMBER_OF_WISH[wish]].wish.id).toBe(wish);
    expect(Object.keys(wantSchema.shape)).toEqual(WISHES);
  });

  test('steps go from the least to the greatest', () => {
    expect(wishEnds('hookStart')).toBe('1 earliest, 5 latest');
    expect(wishWords('totalHook').steps).toEqual(['least', 'little', 'middle', 'much', 'most']);
  });

  test('a step is a whole number from 1 to 5', () => {
    expect(wantSchema.safeParse({ sharpness: 5, totalHook: 1 }).success).toBe(true);
    for (const step of [0, 6, 2.5, '6', '3.5'])
      expect(wantSchema.safeParse({ sharpness: step }).success).toBe(false);
    expect(wantSchema.safeParse({ flare: 3 }).success).toBe(false);
  });
});
