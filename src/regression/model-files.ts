import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { RegressionNotice } from '../records/answers/statements/regression-notices.js';
import { CARD_FILE, cardSchema, MODEL_FILE, type ModelCard, NEXT_MODEL_FILE } from './card.js';
import { type Fingerprint, fingerprint, isSamePhysics } from './fingerprint.js';

/** Where the package keeps its model, in source and in the build alike. */
export const MODELS = fileURLToPath(new URL('../../models/', import.meta.url));

/** A model that may be used, or why there is none. */
type StoredModel =
  | { readonly kind: 'ready'; readonly name: string; readonly file: Uint8Array; readonly card: ModelCard }
  | { readonly kind: 'unusable'; readonly why: RegressionNotice };

/** The probe shots by the engine, possibly rolled elsewhere. */
export type ProbedPhysics = () => Promise<Fingerprint>;

/** Why a model may not be used. */
export const unusable = (code: RegressionNotice['code']) =>
  ({ kind: 'unusable', why: { code, params: {} } }) as const;

/**
 * Whether a model was fitted to the physics engine as it is now.
 *
 * @param now  the probe shots by the engine; if left out, they are rolled here
 */
export async function isOfThisEngine(
  { outputs, physics }: ModelCard,
  now: ProbedPhysics = async () => fingerprint(),
): Promise<boolean> {
  const rmse = outputs.map(({ si, heldOut }) => si * heldOut.rmse);
  return isSamePhysics(physics, await now(), rmse);
}

/** Reads the model and checks that it is there and complete. Never throws. */
export async function readWholeModel(directory: string): Promise<StoredModel> {
  const content = await readFile(`${directory}/${CARD_FILE}`, 'utf8').catch(() => null);
  if (content === null) return unusable('regression-missing');
  const card = parseCard(content);
  let isThere = false;
  for (const name of [MODEL_FILE, NEXT_MODEL_FILE]) {
    const file = await readFile(`${directory}/${name}`).catch(() => null);
    if (file === null) continue;
    isThere = true;
    if (card?.file.sha256 === sha256(file)) return { kind: 'ready', name, file, card };
  }
  return unusable(isThere ? 'regression-damaged' : 'regression-missing');
}

const sha256 = (file: Uint8Array): string => createHash('sha256').update(file).digest('hex');

function parseCard(content: string): ModelCard | null {
  try {
    return cardSchema.parse(JSON.parse(content));
  } catch {
    return null; // not JSON, or not a card
  }
}
