import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { CARD_FILE, cardSchema, MODEL_FILE } from '../../src/regression/card.js';
import { writeModel } from './write-model.js';

/* The end of `npm run fit` alone, for those who kill it: puts the model of one folder in the place of another's. */

const [from = '', to = ''] = process.argv.slice(2);
const card = cardSchema.parse(JSON.parse(readFileSync(join(from, CARD_FILE), 'utf8')));
await writeModel({ file: readFileSync(join(from, MODEL_FILE)), card }, to);
