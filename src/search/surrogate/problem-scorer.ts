import { MIDDLE_LAYOUT } from '../../prepare/middle-layout.js';
import { toLayout } from '../../prepare/to-layout.js';
import type { RegressionNotice } from '../../records/answers/statements/regression-notices.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import type { ModelCard } from '../../regression/card.js';
import { shareInRange } from '../../regression/in-range.js';
import type { ReactionModel } from '../../regression/reaction-model.js';
import { deviationsOf, type Trial } from '../../simulate/evaluator.js';
import type { Setting } from '../../simulate/setting.js';
import { simulator } from '../../simulate/simulator.js';
import type { NominalShot } from '../candidates/nominal-shots.js';
import { score } from '../scoring/score.js';
import { shiftTargets } from '../scoring/world-statistics.js';
import type { Voice } from '../voices/voice.js';
import { layoutLines } from './layout-lines.js';
import { remembered } from './remembered.js';
import { type Known, sharedFeatures, surrogate } from './surrogate.js';
import { worldFeatures } from './world-features.js';

/** Scores layouts of one problem in its worlds by the fitted regression. */
export interface ProblemScorer {
  /** The same answers of the regression, scored by a voice. */
  by(voice: Voice): ScoreIn;
  /** Shots of physics it was tuned to, and those among them that were rolled for it. */
  readonly tunedTo: number;
  readonly shots: number;
}

/**
 * Scores some of the layouts in a world, one after the other.
 *
 * @param world  counted from the first that is not nominal
 * @param which  places in the list of layouts
 * @param tell   receives a layout's place, its score if it stays on the lane, and the chance that it does
 */
export type ScoreIn = (
  world: number,
  which: Int32Array,
  tell: (layout: number, score: number, chance: number) => void,
) => Promise<void>;

/** Least share of a problem's own shots that must lie within the range of the fit. */
const ENOUGH_IN_RANGE = 0.9;

/** Strides through layouts and worlds that share no factor with their numbers, so that pairs do not repeat. */
const LAYOUT_STRIDE = 7919;
const WORLD_STRIDE = 37;

/** Number of worlds surveyed: the first worlds, as many as the survey's last round has. */
export const surveyWorlds = ({ problem, budget }: Pick<Setting, 'problem' | 'budget'>): number =>
  Math.min(problem.luck.length, ...budget.survey.rounds.slice(-1).map(({ worlds }) => worlds));

/**
 * Tunes the regression to shots of this problem: nominal shots of layouts spread over all, and some shots in its worlds.
 *
 * @param layouts   all that will be asked about
 * @param nominal   what physics says of some layouts
 * @param surveyed  how many of the layouts, from the first on, are surveyed; the others affect no result. All when left out
 * @returns the reason instead, where the problem lies outside the range of the fit
 */
export async function problemScorer(
  layouts: readonly LayoutNumbers[],
  nominal: readonly NominalShot[],
  setting: Setting,
  { model, card }: { readonly model: ReactionModel; readonly card: ModelCard },
  surveyed = layouts.length,
): Promise<ProblemScorer | { readonly why: RegressionNotice }> {
  const { problem, evaluator, progress, budget } = setting;
  const { survey } = budget;
  const { radius } = problem.ball.published;
  const count = surveyWorlds(setting);
  const undisturbed = problem.worlds[0];
  const worlds = problem.worlds.slice(1, 1 + count);
  // world by world, since much of a shot is prepared for its world
  const trials = Array.from({ length: survey.shotsInWorlds }, (_, i): Trial => {
    const { layout, outcome } = nominal[(LAYOUT_STRIDE * i) % nominal.length];
    const world = 1 + ((WORLD_STRIDE * i) % worlds.length);
    return { layout: toLayout(layout, radius), world, launch: outcome.launch };
  }).sort((a, b) => a.world - b.world);
  const report = progress('shots to tune to');
  let done = 0;
  const outcomes = await evaluator.evaluate(trials, (count) => {
    done += count;
    report(done, trials.length);
  });
  const known: Known[] = [
    ...nominal.map(({ layout, outcome }) => ({
      layout: toLayout(layout, radius),
      deviations: undisturbed,
      outcome,
    })),
    ...trials.map((trial, i) => ({
      layout: trial.layout,
      deviations: deviationsOf(problem, trial),
      outcome: outcomes[i],
    })),
  ].filter(({ outcome }) => outcome.shot === 'pins');

  const physics = simulator(problem);
  const asked = known.map(({ layout, deviations, outcome }) => ({
    layout,
    deviations,
    launch: outcome.launch,
  }));
  const lines = layoutLines(
    known.filter(({ deviations }) => deviations === undisturbed),
    layouts.map((layout) => toLayout(layout, radius)),
    survey.sample,
    problem.ball.pap_B,
  );
  const inWorlds = worldFeatures(problem.launch.x, lines.angles.subarray(0, surveyed));
  const features = sharedFeatures(asked, physics, inWorlds);
  if (shareInRange(features, card) < ENOUGH_IN_RANGE)
    return { why: { code: 'outside-what-was-fitted', params: {} } };

  const engine = await surrogate(model, card, problem, physics, known, features, inWorlds, lines);
  const middle = { layout: toLayout(MIDDLE_LAYOUT, radius), launch: problem.launch };
  const [middleNominal, ...luck] = await engine.answer(
    [undisturbed, ...problem.luck.slice(0, count)].map((deviations) => ({ ...middle, deviations })),
  );
  const reachedIn = remembered(layouts.length, (world, which, tell) =>
    engine.inWorld(worlds[world], which, tell),
  );
  return {
    by(voice) {
      const effects = layouts.map(voice.effectsOf);
      return (world, which, tell) => {
        const aimed = shiftTargets(voice.targetsIn(world), luck[world], middleNominal);
        return reachedIn(world, which, (layout, byPhysics, chance) =>
          tell(layout, score(voice.reached(effects[layout], world, byPhysics), aimed), chance),
        );
      };
    },
    tunedTo: known.length,
    shots: trials.length,
  };
}
