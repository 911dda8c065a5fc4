import { existsSync, mkdirSync, renameSync } from 'node:fs';
import { sweep } from '../../src/files/leftovers.js';
import { putFile } from '../../src/files/put-file.js';
import { CARD_FILE, MODEL_FILE, NEXT_MODEL_FILE } from '../../src/regression/card.js';
import { MODELS, readWholeModel } from '../../src/regression/model-files.js';
import type { Fitted } from './fit-network.js';
import { modelPage } from './model-page.js';

/**
 * Puts a fitted model, its card and a page about it in place of those that are there.
 *
 * A model and its card must go together, and two files cannot be swapped at once. So the new model is written beside the old one, and
 * the moment its card is in place counts: whenever this is killed, a reader finds the old model or the new one.
 */
export async function writeModel({ file, card }: Fitted, directory = MODELS): Promise<void> {
  mkdirSync(directory, { recursive: true });
  sweep(directory);
  await settle(directory);
  putFile(`${directory}/${NEXT_MODEL_FILE}`, file);
  putFile(`${directory}/${CARD_FILE}`, `${JSON.stringify(card, null, 2)}\n`);
  renameSync(`${directory}/${NEXT_MODEL_FILE}`, `${directory}/${MODEL_FILE}`);
  putFile(`${directory}/README.md`, modelPage(card));
}

/** Puts in place what a run that was killed had written and that its card already speaks of. */
async function settle(directory: string): Promise<void> {
  if (!existsSync(`${directory}/${NEXT_MODEL_FILE}`)) return;
  const stored = await readWholeModel(directory);
  if (stored.kind === 'ready' && stored.name === NEXT_MODEL_FILE)
    renameSync(`${directory}/${NEXT_MODEL_FILE}`, `${directory}/${MODEL_FILE}`);
}
