import { expect, test } from 'vitest';
import { fromKeys } from '../../src/base/from-keys.js';

test('fromKeys: a value for each key, in the order of the keys', () => {
  const lengths = fromKeys(['pin', 'marker'], (key) => key.length);
  expect(lengths.marker).toBe(6);
  expect(Object.entries(lengths)).toEqual([
    ['pin', 3],
    ['marker', 6],
  ]);
});
