import type { RegressionNotice } from '../records/answers/statements/regression-notices.js';
import type { ModelCard } from './card.js';
import { isOfThisEngine, MODELS, type ProbedPhysics, readWholeModel, unusable } from './model-files.js';
import { openModel, type ReactionModel } from './reaction-model.js';

/** The fitted regression, open, or why there is none to use. */
export type Regression =
  | { readonly kind: 'ready'; readonly model: ReactionModel; readonly card: ModelCard }
  | { readonly kind: 'unusable'; readonly why: RegressionNotice };

async function openFrom(folder: string | null): Promise<Regression> {
  if (folder === null) return unusable('regression-not-wanted');
  const stored = await readWholeModel(folder);
  if (stored.kind === 'unusable') return stored;
  const { file, card } = stored;
  try {
    return { kind: 'ready', card, model: await openModel(file, card.fit.basis, card.outputs.length) };
  } catch {
    return unusable('regression-unreadable');
  }
}

/** The fitted regression, opened once, when it is first asked for, for all that share it. */
export interface SharedRegression {
  /** @param physics  where probe shots need not be rolled again */
  open(physics?: ProbedPhysics): Promise<Regression>;
  /** The same without checking that it matches the current physics engine, which takes too long for a first look. */
  glance(): Promise<Regression>;
  /** Releases it; it opens again on the next request. */
  close(): Promise<void>;
}

/**
 * Shares the fitted regression. Never throws: without its runtime it is evaluated by plain arithmetic, and without a usable
 * file physics searches alone; both take longer.
 *
 * @param folder  where model and card lie; the package's own when left out, null to do without
 */
export function shareRegression(folder: string | null = MODELS): SharedRegression {
  let opened: Promise<Regression> | undefined;
  let checked: Promise<Regression> | undefined;
  const glance = (): Promise<Regression> => {
    opened ??= openFrom(folder);
    return opened;
  };
  const check = async (physics?: ProbedPhysics): Promise<Regression> => {
    const regression = await glance();
    return regression.kind === 'unusable' || (await isOfThisEngine(regression.card, physics))
      ? regression
      : unusable('regression-of-earlier-engine');
  };
  return {
    glance,
    open(physics) {
      checked ??= check(physics);
      return checked;
    },
    async close() {
      const regression = await opened;
      opened = undefined;
      checked = undefined;
      if (regression?.kind === 'ready') await regression.model.close();
    },
  };
}
