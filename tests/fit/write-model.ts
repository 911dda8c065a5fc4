import { mkdir } from 'node:fs/promises';
import { sweep } from '../../src/files/leftovers.js';
import { putFiles } from '../../src/files/put-file.js';
import { CARD_FILE, MODEL_FILE } from '../../src/regression/card.js';
import { MODELS } from '../../src/regression/model-files.js';
import type { Fitted } from './fit-network.js';
import { modelPage } from './model-page.js';

/** Puts a fitted model, its card and a page about it in place. */
export async function writeModel({ file, card }: Fitted, directory = MODELS): Promise<void> {
  await mkdir(directory, { recursive: true });
  sweep(directory);
  putFiles([
    [`${directory}/${MODEL_FILE}`, file],
    [`${directory}/${CARD_FILE}`, `${JSON.stringify(card, null, 2)}\n`],
    [`${directory}/README.md`, modelPage(card)],
  ]);
}
