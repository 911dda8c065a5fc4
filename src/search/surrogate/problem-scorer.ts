import { counted } from '../../base/counted.js';
import { MIDDLE_LAYOUT } from '../../prepare/middle-layout.js';
import { toLayout } from '../../prepare/to-layout.js';
import type { RegressionNotice } from '../../records/answers/statements/regression-notices.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import type { ModelCard } from '../../regression/card.js';
import { isInRange } from '../../regression/in-range.js';
import type { Arithmetic, ReactionModel } from '../../regression/reaction-model.js';
import { deviationsOf, type Trial } from '../../simulate/evaluator.js';
import type { Setting } from '../../simulate/setting.js';
import { simulator } from '../../simulate/simulator.js';
import { withOthers } from '../candidates/candidates.js';
import type { NominalShot } from '../candidates/nominal-shots.js';
import { score } from '../scoring/score.js';
import { shiftTargets } from '../scoring/world-statistics.js';
import type { Voice } from '../voices/voice.js';
import { layoutLines } from './layout-lines.js';
import { remembered } from './remembered.js';
import { type Asked, type Known, sharedFeatures, surrogate } from './surrogate.js';
import { worldFeatures } from './world-features.js';

/** Scores layouts of one problem in its worlds by the fitted regression. */
export interface ProblemScorer {
  /** All that may be asked about, and how many of them, from the first on, are surveyed. */
  readonly layouts: readonly LayoutNumbers[];
  readonly surveyed: number;
  /** How the regression's answers are computed. */
  readonly arithmetic: Arithmetic;
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

/** Strides through layouts and worlds that share no factor with their numbers, so that pairs do not repeat. */
const LAYOUT_STRIDE = 7919;
const WORLD_STRIDE = 37;

/** Number of worlds surveyed: the first worlds, as many as the survey's last round has. */
export const surveyWorlds = ({ problem, budget }: Pick<Setting, 'problem' | 'budget'>): number =>
  Math.min(problem.luck.length, ...budget.survey.rounds.slice(-1).map(({ worlds }) => worlds));

/**
 * Tunes the regression to shots of this problem: nominal shots of layouts spread over all, and some shots in its worlds.
 *
 * @param layouts  all that will be surveyed
 * @param nominal  what physics says of some layouts
 * @param also     others that may be asked about; they affect no result
 * @returns the reason instead, where the problem lies outside the range of the fit
 */
export async function problemScorer(
  layouts: readonly LayoutNumbers[],
  nominal: readonly NominalShot[],
  setting: Setting,
  { model, card }: { readonly model: ReactionModel; readonly card: ModelCard },
  also: readonly LayoutNumbers[] = [],
): Promise<ProblemScorer | { readonly why: RegressionNotice }> {
  const { problem, budget } = setting;
  const { radius } = problem.ball.published;
  const count = surveyWorlds(setting);
  const [undisturbed] = problem.worlds;
  const worlds = problem.worlds.slice(1, 1 + count);
  const inWorlds = await shotsInWorlds(nominal, worlds.length, setting);
  const known: Known[] = [
    ...nominal.map(({ layout, outcome }) => ({
      layout: toLayout(layout, radius),
      deviations: undisturbed,
      outcome,
    })),
    ...inWorlds,
  ].filter(({ outcome }) => outcome.shot === 'pins');

  const physics = simulator(problem);
  const all = withOthers(layouts, also);
  const lines = layoutLines(
    known.filter(({ deviations }) => deviations === undisturbed),
    all.map((layout) => toLayout(layout, radius)),
    budget.survey.sample,
    problem.ball.pap_B,
  );
  const featuresIn = worldFeatures(problem.launch.x, lines.angles.subarray(0, layouts.length));
  const features = sharedFeatures(known.map(asked), physics, featuresIn);
  if (!isInRange(features, card)) return { why: { code: 'outside-what-was-fitted', params: {} } };

  const engine = await surrogate(model, card, problem, physics, known, features, featuresIn, lines);
  const middle = { layout: toLayout(MIDDLE_LAYOUT, radius), launch: problem.launch };
  const [middleNominal, ...luck] = await engine.answer(
    [undisturbed, ...problem.luck.slice(0, count)].map((deviations) => ({ ...middle, deviations })),
  );
  const reachedIn = remembered(all.length, (world, which, tell) =>
    engine.inWorld(worlds[world], which, tell),
  );
  return {
    layouts: all,
    surveyed: layouts.length,
    arithmetic: model.arithmetic,
    by(voice) {
      const effects = all.map(voice.effectsOf);
      return (world, which, tell) => {
        const aimed = shiftTargets(voice.targetsIn(world), luck[world], middleNominal);
        return reachedIn(world, which, (layout, byPhysics, chance) =>
          tell(layout, score(voice.reached(effects[layout], world, byPhysics), aimed), chance),
        );
      };
    },
    tunedTo: known.length,
    shots: inWorlds.length,
  };
}

/** Rolls the shots in worlds that the regression is tuned to: pairs of layout and world spread over both, on the layouts' own lines. */
async function shotsInWorlds(
  nominal: readonly NominalShot[],
  worlds: number,
  { problem, evaluator, progress, budget }: Setting,
): Promise<readonly Known[]> {
  const { radius } = problem.ball.published;
  // world by world, since much of a shot is prepared for its world
  const trials = Array.from({ length: budget.survey.shotsInWorlds }, (_, i): Trial => {
    const { layout, outcome } = nominal[(LAYOUT_STRIDE * i) % nominal.length];
    const world = 1 + ((WORLD_STRIDE * i) % worlds);
    return { layout: toLayout(layout, radius), world, launch: outcome.launch };
  }).sort((a, b) => a.world - b.world);
  const outcomes = await evaluator.evaluate(trials, counted(progress('shots to tune to'), trials.length));
  return trials.map((trial, i) => ({
    layout: trial.layout,
    deviations: deviationsOf(problem, trial),
    outcome: outcomes[i],
  }));
}

/** The shot itself, without what came of it. */
const asked = ({ layout, deviations, outcome }: Known): Asked => ({
  layout,
  deviations,
  launch: outcome.launch,
});
