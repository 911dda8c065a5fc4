import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { CARD_FILE } from '../../src/regression/card.js';
import { MODELS } from '../../src/regression/model-files.js';
import { shareRegression } from '../../src/regression/open-regression.js';

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'flarewise-'));
  await cp(MODELS, folder, { recursive: true });
});
afterEach(() => rm(folder, { recursive: true }));

test('shareRegression: opened once for all, a glance and a search alike; after closing, anew', async () => {
  const shared = shareRegression(folder);
  const first = await shared.glance();
  expect(first.kind).toBe('ready');
  expect(await shared.open()).toBe(first);
  expect(await shared.open()).toBe(first);
  await shared.close();
  expect(await shared.open()).not.toBe(first);
  await shared.close();
});

test('shareRegression: of an earlier engine a glance is had, but no search', async () => {
  const card = JSON.parse(await readFile(join(folder, CARD_FILE), 'utf8'));
  card.physics.numbers[0] += 10;
  await writeFile(join(folder, CARD_FILE), JSON.stringify(card));
  const shared = shareRegression(folder);
  expect((await shared.glance()).kind).toBe('ready');
  expect(await shared.open()).toMatchObject({ why: { code: 'regression-of-earlier-engine' } });
  await shared.close();
});

test('shareRegression: closing one that was never opened does nothing', async () => {
  await expect(shareRegression(null).close()).resolves.toBeUndefined();
});
