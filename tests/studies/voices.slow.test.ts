import { expect, test } from 'vitest';
import { proofCases } from './proof-cases.js';
import { voicesRegret, worstMeans } from './voices.js';

const CASES = 8;
const SEED = 23;

test('where things are otherwise than assumed, what is chosen by both weighed lacks least in the worst', async () => {
  const all = [];
  for (const proofCase of proofCases(CASES, SEED)) all.push(await voicesRegret(proofCase));
  const worst = worstMeans(all, 'inShots');
  expect(worst.weighed).toBeLessThan(worst.physics);
  expect(worst.weighed).toBeLessThan(worst.practice);
});
