import { expect, test } from 'vitest';
import { holdOverCases } from '../support/reasons/hold-over-cases.js';

test('reasons: over 20 random cases every sentence is borne out by numbers, and every cause by balls mixed and rolled anew', async () => {
  const { cases, rolled, offPocket, given } = await holdOverCases(
    Array.from({ length: 20 }, (_, i) => 1 + i),
  );
  expect(cases).toBeGreaterThanOrEqual(18);
  expect(rolled).toBeGreaterThan(60);
  expect(offPocket).toBeLessThan(0.1 * rolled);
  for (const name of ['centre', 'flare', 'inertia', 'drilling-angle-moves-centre'])
    expect(given.get(name), name).toBeGreaterThan(0);
});
