import type { LayoutNumbers } from '../records/layout-text.js';
import type { ModelCard } from '../regression/card.js';
import type { ReactionModel } from '../regression/reaction-model.js';
import type { NominalShot } from './nominal-shots.js';
import { problemScorer } from './problem-scorer.js';
import { race } from './race.js';
import type { Setting } from './setting.js';
import type { Target } from './target.js';

/** What the regression expects of every layout. */
export interface Survey {
  /** Best first, with the mean score over the worlds each one was scored in. */
  readonly ranked: readonly { readonly layout: LayoutNumbers; readonly expected: number }[];
  readonly candidateWorlds: number;
  /** Shots of physics it was tuned to, and those among them that were rolled for it. */
  readonly tunedTo: number;
  readonly shots: number;
}

/** A survey, or in one line why physics must do without. */
export type Surveyed = Survey | { readonly why: string };

/**
 * Scores all layouts in plausible worlds by the fitted regression, tuned to shots of this very problem.
 *
 * @param layouts  all that may be marked
 * @param nominal  what physics says of some of them, spread over all
 */
export async function survey(
  layouts: readonly LayoutNumbers[],
  nominal: readonly NominalShot[],
  targets: readonly Target[],
  setting: Setting,
  regression: { readonly model: ReactionModel; readonly card: ModelCard },
): Promise<Surveyed> {
  const scorer = await problemScorer(layouts, nominal, targets, setting, regression);
  if ('why' in scorer) return scorer;
  const worlds = setting.problem.luck.length;
  const report = setting.progress('worlds surveyed');
  let candidateWorlds = 0;
  const raced = await race(layouts.length, worlds, async (world, which, tell) => {
    await scorer.scoreIn(world, which, tell);
    candidateWorlds += which.length;
    report(world + 1, worlds);
  });
  return {
    ranked: raced.map(({ index, meanScore }) => ({ layout: layouts[index], expected: meanScore })),
    candidateWorlds,
    tunedTo: scorer.tunedTo,
    shots: scorer.shots,
  };
}
