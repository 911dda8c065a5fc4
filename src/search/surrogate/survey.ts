import { setImmediate as nextTurn } from 'node:timers/promises';
import { meanSimple } from 'simple-statistics';
import type { RegressionNotice } from '../../records/answers/statements/regression-notices.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import type { Arithmetic } from '../../regression/reaction-model.js';
import type { Setting } from '../../simulate/setting.js';
import { keyOf } from '../candidates/candidates.js';
import { successiveHalving } from '../scoring/successive-halving.js';
import type { Voice } from '../voices/voice.js';
import { type ProblemScorer, type ScoreIn, surveyWorlds } from './problem-scorer.js';

/** What the regression expects of every layout. */
export interface Survey {
  /** How the regression's answers were computed. */
  readonly arithmetic: Arithmetic;
  /** Best first. */
  readonly ranked: readonly LayoutNumbers[];
  /** Mean score over worlds, where the ball stays on the lane; undefined for a layout that was neither surveyed nor looked at. */
  expected(layout: LayoutNumbers): number | undefined;
  /** Mean chance over worlds that the ball stays on the lane; undefined for a layout that was not surveyed. */
  arrives(layout: LayoutNumbers): number | undefined;
  /** Scores some layouts in every world of the survey. */
  look(layouts: readonly LayoutNumbers[]): Promise<void>;
  /** Scores in the survey's worlds, in order, of a layout that was looked at. */
  scores(layout: LayoutNumbers): readonly number[] | undefined;
  readonly candidateWorlds: () => number;
  /** Shots of physics it was tuned to, and those among them that were rolled for it. */
  readonly tunedTo: number;
  readonly shots: number;
}

/** A survey, or why physics must do without. */
export type Surveyed = Survey | { readonly why: RegressionNotice };

/**
 * Scores all layouts in plausible worlds by the fitted regression, as a voice reads them.
 *
 * @param scorer  the regression tuned to this problem
 */
export async function survey(scorer: ProblemScorer, voice: Voice, setting: Setting): Promise<Survey> {
  const { layouts } = scorer;
  const worlds = surveyWorlds(setting);
  const report = setting.progress('worlds surveyed');
  let candidateWorlds = 0;
  const byVoice = scorer.by(voice);
  const scoreIn: ScoreIn = async (world, which, tell) => {
    await byVoice(world, which, tell);
    candidateWorlds += which.length;
  };
  const chances = new Float64Array(layouts.length);
  const met = new Int32Array(layouts.length);
  const results = await successiveHalving(
    scorer.surveyed,
    worlds,
    setting.budget.survey.rounds,
    async (world, which, tell) => {
      await scoreIn(world, which, (place, score, chance) => {
        chances[place] += chance;
        met[place]++;
        tell(place, score);
      });
      report(world + 1, worlds);
      await nextTurn(); // lets keys, ctrl-C, the progress bar and what else is going on through
    },
  );
  const places = new Map(layouts.map((layout, i) => [keyOf(layout), i]));
  const means = new Map<number, number>();
  for (const { index, meanScore } of results) means.set(index, meanScore);
  const looked = new Map<number, readonly number[]>();
  const placeOf = (layout: LayoutNumbers): number | undefined => places.get(keyOf(layout));
  return {
    arithmetic: scorer.arithmetic,
    ranked: results.map(({ index }) => layouts[index]),
    expected: (layout) => means.get(placeOf(layout) ?? -1),
    arrives(layout) {
      const place = placeOf(layout);
      return place === undefined ? undefined : chances[place] / met[place];
    },
    async look(some) {
      const fresh = some
        .map(placeOf)
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
        means.set(place, meanSimple(list));
      }
    },
    scores: (layout) => looked.get(placeOf(layout) ?? -1),
    candidateWorlds: () => candidateWorlds,
    tunedTo: scorer.tunedTo,
    shots: scorer.shots,
  };
}
