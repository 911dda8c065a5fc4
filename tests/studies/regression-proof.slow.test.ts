import { quantile } from 'simple-statistics';
import { expect, test } from 'vitest';
import { proofCases } from './proof-cases.js';
import { addShares, NUMBERS, type Proof, prove } from './regression-proof.js';

/** Of the cases of REGRESSION.md, every so many-th. */
const EVERY = 7;
const CASES = 40;
const SEED = 11;

test('the search comes as near to the best of brute force as the studies say', async () => {
  const proofs: Proof[] = [];
  for (const [i, each] of proofCases(CASES, SEED).entries())
    if (i % EVERY === 0) proofs.push(await prove(each));
  const regrets = proofs.map(({ regret }) => Math.max(0, regret));
  expect(quantile(regrets, 0.5)).toBeLessThanOrEqual(0.005);
  expect(Math.max(...regrets)).toBeLessThanOrEqual(0.03);
  const { inside, of } = proofs.map(({ bands }) => bands).reduce(addShares);
  expect(inside / of).toBeGreaterThanOrEqual(0.85);
  expect(inside / of).toBeLessThanOrEqual(0.95);
  const asked = proofs.map(({ regression }) => regression).filter((each) => each !== null);
  expect(asked.length).toBeGreaterThan(0);
  expect(
    quantile(
      asked.map(({ ranks }) => ranks),
      0.5,
    ),
  ).toBeGreaterThanOrEqual(0.98);
  for (const { bands } of asked) for (const name of NUMBERS) expect(bands[name].of).toBeGreaterThan(0);
});
