import type { RegressionNotice } from '../../records/answers/statements/regression-notices.js';
import type { ModelCard } from '../../regression/card.js';
import type { Fingerprint } from '../../regression/fingerprint.js';
import { MODELS, readModel } from '../../regression/model-files.js';
import { openModel, type ReactionModel } from '../../regression/reaction-model.js';

/** The fitted regression, open, or why there is none to use. */
export type Regression =
  | { readonly kind: 'ready'; readonly model: ReactionModel; readonly card: ModelCard }
  | { readonly kind: 'unusable'; readonly why: RegressionNotice };

/**
 * Opens the fitted regression. Never throws: without its runtime it is worked out by plain arithmetic, and without a file that
 * can be used physics searches alone; both take longer.
 *
 * @param folder   where model and card lie; the package's own when left out, null to do without
 * @param physics  what the engine does with the probe shots, where they need not be rolled anew
 */
export async function openRegression(
  folder: string | null = MODELS,
  physics?: () => Promise<Fingerprint>,
): Promise<Regression> {
  if (folder === null) return { kind: 'unusable', why: { code: 'regression-not-wanted', params: {} } };
  const stored = await readModel(folder, physics);
  if (stored.kind === 'unusable') return stored;
  const { file, card } = stored;
  try {
    return { kind: 'ready', card, model: await openModel(file, card.fit.basis, card.outputs.length) };
  } catch {
    return { kind: 'unusable', why: { code: 'regression-unreadable', params: {} } };
  }
}
