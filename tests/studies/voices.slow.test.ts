import { expect, test } from 'vitest';
import { proofCases } from './proof-cases.js';
import { type VoicesFound, voicesRegret, worstMeans } from './voices.js';

const CASES = 8;
const SEED = 23;

test('where things are otherwise than assumed, what is chosen by both weighed lacks least in the worst', async () => {
  const all: VoicesFound[] = [];
  for (const proofCase of proofCases(CASES, SEED)) all.push(await voicesRegret(proofCase));
  const worst = worstMeans(
    all.map(({ regrets }) => regrets),
    'inShots',
  );
  expect(worst.weighed).toBeLessThan(worst.physics);
  expect(worst.weighed).toBeLessThan(worst.practice);
  const [inside, of] = (['inside', 'of'] as const).map((key) =>
    all.reduce((sum, { bands }) => sum + bands[key], 0),
  ) as [number, number];
  expect(inside / of).toBeGreaterThan(0.85);
  expect(inside / of).toBeLessThan(0.95);
});
