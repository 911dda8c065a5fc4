import type { Want } from '../../records/schemas/want.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import type { ShotProblem } from '../../simulate/shot-problem.js';
import { keyOf } from '../candidates/candidates.js';
import type { NominalShot } from '../candidates/nominal-shots.js';
import { type BeliefEffects, type BeliefSizes, beliefEffects } from './belief-effects.js';
import { type ChanceOf, drawBeliefs, expectedSizes, MIDDLE_SIZES } from './draw-beliefs.js';
import { layoutQuantities } from './layout-quantities.js';
import { practiceScore } from './practice-voice.js';
import type { Voice } from './voice.js';
import { weighedVoice } from './weighed-voice.js';

/** The beliefs of practice about the layouts of one ball. */
export interface ProblemBeliefs {
  /** What each belief, in full size, adds relative to the usual middle layout. */
  effectsOf(layout: LayoutNumbers): BeliefEffects;
  /** Sizes of the beliefs, world by world. */
  readonly sizes: readonly BeliefSizes[];
  /** Physics and practice weighed. */
  readonly voice: Voice;
  /** Score by practice alone, its beliefs in the middle of their sizes. */
  byPractice(layout: LayoutNumbers): number;
  /** The same without one of the beliefs, by its place. */
  byPracticeWithout(belief: number): (layout: LayoutNumbers) => number;
}

/**
 * Prepares the beliefs of practice about the layouts of one ball.
 *
 * @param markable  layouts spread over all that are asked about
 * @param even      allowed layouts of an even grid in the nominal world
 * @param usual     the usual middle layout
 */
export function problemBeliefs(
  want: Want,
  problem: ShotProblem,
  markable: readonly LayoutNumbers[],
  even: readonly NominalShot[],
  usual: NominalShot,
  { seed, chanceOf }: { readonly seed: number; readonly chanceOf: ChanceOf },
): ProblemBeliefs {
  const quantitiesOf = layoutQuantities(problem, markable);
  const reference = quantitiesOf(usual.layout);
  const known = new Map<string, BeliefEffects>();
  const effectsOf = (layout: LayoutNumbers): BeliefEffects => {
    const key = keyOf(layout);
    const effects = known.get(key) ?? beliefEffects(quantitiesOf(layout), reference);
    known.set(key, effects);
    return effects;
  };
  const sizes = drawBeliefs(seed, problem.luck.length, chanceOf);
  const layouts = even.map(({ layout }) => layout);
  const practice = (sizes: BeliefSizes): ((layout: LayoutNumbers) => number) =>
    practiceScore(want, usual.outcome, layouts, effectsOf, sizes);
  return {
    effectsOf,
    sizes,
    voice: weighedVoice(want, even, effectsOf, sizes, expectedSizes(chanceOf)),
    byPractice: practice(MIDDLE_SIZES),
    byPracticeWithout: (belief) => practice(MIDDLE_SIZES.map((size, b) => (b === belief ? 0 : size))),
  };
}
