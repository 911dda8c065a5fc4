import type { LayoutNumbers } from '../records/layout-text.js';
import type { ModelCard } from '../regression/card.js';
import { shareInRange } from '../regression/in-range.js';
import type { ReactionModel } from '../regression/reaction-model.js';
import type { Trial } from './evaluator.js';
import { shiftTargets } from './in-worlds.js';
import { MIDDLE_LAYOUT } from './middle-layout.js';
import type { NominalShot } from './nominal-shots.js';
import { race } from './race.js';
import { score } from './score.js';
import type { Setting } from './setting.js';
import { simulator } from './simulator.js';
import { featuresOf, type Known, surrogate } from './surrogate.js';
import type { Target } from './target.js';
import { toLayout } from './to-layout.js';

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

/** Least share of a problem's own shots that must lie where the regression was fitted. */
const ENOUGH_IN_RANGE = 0.9;

/** Shots in worlds that the regression is tuned to, besides the nominal ones. */
const SHOTS_IN_WORLDS = 400;

/** Strides through layouts and worlds that share no factor with their numbers, so that pairs do not repeat. */
const LAYOUT_STRIDE = 7919;
const WORLD_STRIDE = 37;

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
  { problem, evaluator, progress }: Setting,
  { model, card }: { readonly model: ReactionModel; readonly card: ModelCard },
): Promise<Surveyed> {
  const { radius } = problem.ball.published;
  const worlds = problem.worlds.slice(1);
  const trials = Array.from({ length: SHOTS_IN_WORLDS }, (_, i): Trial => {
    const { layout, outcome } = nominal[(LAYOUT_STRIDE * i) % nominal.length];
    const world = 1 + ((WORLD_STRIDE * i) % worlds.length);
    return { layout: toLayout(layout, radius), world, launch: outcome.launch };
  });
  const report = progress('shots to tune to');
  let done = 0;
  const outcomes = await evaluator.evaluate(trials, (count) => {
    done += count;
    report(done, trials.length);
  });
  const known: Known[] = [
    ...nominal.map(({ layout, outcome }) => ({
      layout: toLayout(layout, radius),
      world: problem.worlds[0],
      outcome,
    })),
    ...trials.map(({ layout, world }, i) => ({ layout, world: problem.worlds[world], outcome: outcomes[i] })),
  ].filter(({ outcome }) => outcome.shot === 'pins');

  const physics = simulator(problem);
  const asked = known.map(({ layout, world, outcome }) => ({ layout, world, launch: outcome.launch }));
  if (shareInRange(featuresOf(asked, physics), card) < ENOUGH_IN_RANGE)
    return { why: 'this bowler, ball or lane lies outside what the regression was fitted on' };

  const marked = layouts.map((layout) => toLayout(layout, radius));
  const engine = await surrogate(model, card, problem, physics, known, marked);
  const middle = { layout: toLayout(MIDDLE_LAYOUT, radius), launch: problem.launch };
  const [middleNominal, ...luck] = await engine.answer(
    [problem.worlds[0], ...problem.luck].map((world) => ({ ...middle, world })),
  );
  let candidateWorlds = 0;
  const reportRace = progress('worlds surveyed');
  const raced = await race(layouts.length, worlds.length, async (world, which, tell) => {
    const shifted = shiftTargets(targets, luck[world], middleNominal);
    await engine.inWorld(worlds[world], which, (index, reached) => tell(index, score(reached, shifted)));
    candidateWorlds += which.length;
    reportRace(world + 1, worlds.length);
  });
  return {
    ranked: raced.map(({ index, meanScore }) => ({ layout: layouts[index], expected: meanScore })),
    candidateWorlds,
    tunedTo: known.length,
    shots: trials.length,
  };
}
