import type { Want } from '../../records/schemas/want.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import type { Reached } from '../../simulate/readings.js';
import { score } from '../scoring/score.js';
import { type Target, targetsOf } from '../scoring/target.js';
import type { BeliefEffects, BeliefSizes } from './belief-effects.js';
import { believedReached } from './weighed-voice.js';

/**
 * Practice alone: every layout does what the usual middle layout does by physics, plus the beliefs, all of which hold.
 *
 * @param usual     the usual middle layout's nominal shot
 * @param allowed   layouts spread over all that are allowed, at least one when a score is asked for
 * @returns score of a layout
 */
export function practiceScore(
  want: Want,
  usual: Reached,
  allowed: readonly LayoutNumbers[],
  effectsOf: (layout: LayoutNumbers) => BeliefEffects,
  sizes: BeliefSizes,
): (layout: LayoutNumbers) => number {
  const believed = (layout: LayoutNumbers): Reached => believedReached(usual, effectsOf(layout), sizes);
  let targets: readonly Target[] | undefined;
  return (layout) => {
    targets ??= targetsOf(want, allowed.map(believed));
    return score(believed(layout), targets);
  };
}
