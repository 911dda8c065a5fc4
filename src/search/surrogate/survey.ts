import { meanSimple } from 'simple-statistics';
import type { RegressionNotice } from '../../records/answers/statements/regression-notices.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import type { ModelCard } from '../../regression/card.js';
import type { Arithmetic, ReactionModel } from '../../regression/reaction-model.js';
import type { Setting } from '../../simulate/setting.js';
import { keyOf } from '../candidates/candidates.js';
import type { NominalShot } from '../candidates/nominal-shots.js';
import { successiveHalving } from '../scoring/successive-halving.js';
import type { Target } from '../scoring/target.js';
import { type ProblemScorer, problemScorer, surveyWorlds } from './problem-scorer.js';

/** What the regression expects of every layout. */
export interface Survey {
  /** What worked the regression's answers out. */
  readonly arithmetic: Arithmetic;
  /** Best first. */
  readonly ranked: readonly LayoutNumbers[];
  /** Mean score over worlds; undefined for a layout that was not surveyed. */
  expected(layout: LayoutNumbers): number | undefined;
  /** Scores some layouts in every world of the survey. */
  look(layouts: readonly LayoutNumbers[]): Promise<void>;
  /** Scores in the survey's worlds in their order, of a layout that was looked at. */
  scores(layout: LayoutNumbers): readonly number[] | undefined;
  readonly candidateWorlds: () => number;
  /** Shots of physics it was tuned to, and those among them that were rolled for it. */
  readonly tunedTo: number;
  readonly shots: number;
}

/** A survey, or why physics must do without. */
export type Surveyed = Survey | { readonly why: RegressionNotice };

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
  const worlds = surveyWorlds(setting);
  const report = setting.progress('worlds surveyed');
  let candidateWorlds = 0;
  const scoreIn: ProblemScorer['scoreIn'] = async (world, which, tell) => {
    await scorer.scoreIn(world, which, tell);
    candidateWorlds += which.length;
  };
  const results = await successiveHalving(
    layouts.length,
    worlds,
    setting.budget.survey.rounds,
    async (world, which, tell) => {
      await scoreIn(world, which, tell);
      report(world + 1, worlds);
    },
  );
  const places = new Map(layouts.map((layout, i) => [keyOf(layout), i]));
  const means = Float64Array.from(layouts, () => 0);
  for (const { index, meanScore } of results) means[index] = meanScore;
  const looked = new Map<number, readonly number[]>();
  return {
    arithmetic: regression.model.arithmetic,
    ranked: results.map(({ index }) => layouts[index]),
    expected(layout) {
      const place = places.get(keyOf(layout));
      return place === undefined ? undefined : means[place];
    },
    async look(some) {
      const fresh = some
        .map((layout) => places.get(keyOf(layout)))
        .filter((place) => place !== undefined)
        .filter((place) => !looked.has(place));
      const scores = new Map(fresh.map((place) => [place, Array.from({ length: worlds }, () => 0)]));
      const which = Int32Array.from(scores.keys());
      for (let world = 0; world < worlds && which.length > 0; world++)
        await scoreIn(world, which, (place, score) => {
          scores.get(place)![world] = score;
        });
      for (const [place, list] of scores) {
        looked.set(place, list);
        means[place] = meanSimple(list);
      }
    },
    scores: (layout) => looked.get(places.get(keyOf(layout)) ?? -1),
    candidateWorlds: () => candidateWorlds,
    tunedTo: scorer.tunedTo,
    shots: scorer.shots,
  };
}
