import { expect, test } from 'vitest';
import { cardSchema } from '../../src/regression/card.js';
import { type FitOptions, fitNetwork } from './fit-network.js';
import { shotRows } from './shot-rows.js';

const LANES = 30;
const rows = shotRows(3, 0, LANES);
const options: FitOptions = {
  seed: 3,
  lanes: LANES,
  widths: [12, 8],
  epochs: 3,
  version: 'of a test',
  roughness: [],
};

test('the same shots and seed give the same file and card, byte for byte; another seed gives others', async () => {
  const first = await fitNetwork(rows, options);
  const again = await fitNetwork(rows, options);
  expect(Buffer.from(again.file).equals(first.file)).toBe(true);
  expect(again.card).toEqual(first.card);
  expect(cardSchema.parse(first.card)).toEqual(first.card);
  const other = await fitNetwork(rows, { ...options, seed: 4 });
  expect(Buffer.from(other.file).equals(first.file)).toBe(false);
});
