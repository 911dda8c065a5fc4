import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { RegressionNotice } from '../../src/records/answers/statements/regression-notices.js';
import { CARD_FILE, MODEL_FILE, NEXT_MODEL_FILE } from '../../src/regression/card.js';
import { MODELS } from '../../src/regression/model-files.js';
import { shareRegression } from '../../src/regression/open-regression.js';

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'flarewise-model-'));
  await cp(MODELS, folder, { recursive: true });
});
afterEach(() => rm(folder, { recursive: true }));

/** Why the model in the folder is not used; null when it is. */
const why = async (): Promise<RegressionNotice['code'] | null> => {
  const shared = shareRegression(folder);
  const regression = await shared.open();
  await shared.close();
  return regression.kind === 'unusable' ? regression.why.code : null;
};

/** Writes the card again with something in it changed. */
async function changeCard(change: (card: { physics: { numbers: number[] }; fit: object }) => void) {
  const path = join(folder, CARD_FILE);
  const card = JSON.parse(await readFile(path, 'utf8'));
  change(card);
  await writeFile(path, JSON.stringify(card));
}

test('a whole copy is ready', async () => {
  expect(await why()).toBe(null);
});

test.each([MODEL_FILE, CARD_FILE])('without %s it is missing', async (name) => {
  await rm(join(folder, name));
  expect(await why()).toBe('regression-missing');
});

test('a new model that its card speaks of counts, though the old one still stands in its place', async () => {
  const path = join(folder, MODEL_FILE);
  await cp(path, join(folder, NEXT_MODEL_FILE));
  await writeFile(path, 'the old one');
  expect(await why()).toBe(null);
  await writeFile(join(folder, NEXT_MODEL_FILE), 'half of the new one');
  expect(await why()).toBe('regression-damaged');
});

test('with one bit of the file turned it is damaged', async () => {
  const path = join(folder, MODEL_FILE);
  const file = await readFile(path);
  file[file.length >> 1] ^= 1;
  await writeFile(path, file);
  expect(await why()).toBe('regression-damaged');
});

test.each(['', '{', '{}', '[]', 'null'])('with a card of %j it is damaged', async (content) => {
  await writeFile(join(folder, CARD_FILE), content);
  expect(await why()).toBe('regression-damaged');
});

test('with a card that lacks a part it is damaged', async () => {
  await changeCard((card) => Object.assign(card, { fit: {} }));
  expect(await why()).toBe('regression-damaged');
});

test('with other physics on its card it is of an earlier engine', async () => {
  await changeCard(({ physics }) => {
    physics.numbers[2] += 0.05; // m of total hook: two boards
  });
  expect(await why()).toBe('regression-of-earlier-engine');
});
