import { expect, test } from 'vitest';
import { Lender } from '../../../src/motion/shot/lender.js';
import { Workspace } from '../../../src/motion/shot/workspace.js';

test('a lender gives each of a few shots a workspace of its own, and the same ones again to the next few', () => {
  const lender = new Lender();
  const first = [lender.next(), lender.next(), lender.next()];
  expect(new Set(first).size).toBe(3);
  for (const each of first) expect(each).toBeInstanceOf(Workspace);
  lender.beginAnew();
  expect([lender.next(), lender.next()]).toEqual(first.slice(0, 2));
  expect(lender.next()).toBe(first[2]);
});
