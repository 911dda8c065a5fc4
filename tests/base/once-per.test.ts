import { expect, test } from 'vitest';
import { oncePer } from '../../src/base/once-per.js';

test('oncePer: makes a thing once for each object, also one that is undefined', () => {
  const asked: object[] = [];
  const nothing = oncePer((key: { readonly id: number }) => void asked.push(key));
  const [one, alike] = [{ id: 1 }, { id: 1 }];
  for (const key of [one, alike, one]) expect(nothing(key)).toBeUndefined();
  expect(asked).toEqual([one, alike]);
  expect(asked[0]).toBe(one);

  const boxed = oncePer(({ id }: { readonly id: number }) => ({ id }));
  expect(boxed(one)).toBe(boxed(one));
  expect(boxed(alike)).not.toBe(boxed(one));
});
