import { expect, test } from 'vitest';
import { holdOverCases } from '../support/reasons/hold-over-cases.js';

test('reasons: over 200 random cases every sentence is borne out by numbers, and every cause by balls mixed and rolled anew', async () => {
  const { cases, rolled, offPocket, given } = await holdOverCases(
    Array.from({ length: 200 }, (_, i) => 1 + i),
  );
  expect(cases).toBeGreaterThanOrEqual(180);
  expect(rolled).toBeGreaterThan(600);
  expect(offPocket).toBeLessThan(0.1 * rolled);
  for (const name of ['centre', 'flare', 'inertia', 'drilling-angle-moves-centre', 'difference-by-finish'])
    expect(given.get(name), name).toBeGreaterThan(5);
  console.info(
    `${cases} cases, ${rolled} balls rolled anew, ${offPocket} beside the pocket:`,
    Object.fromEntries(given),
  );
});
