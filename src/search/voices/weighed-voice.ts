import type { Want } from '../../records/schemas/want.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import type { Reached } from '../../simulate/readings.js';
import type { Outcome } from '../../simulate/simulator.js';
import type { NominalShot } from '../candidates/nominal-shots.js';
import { type Target, targetsOf } from '../scoring/target.js';
import { addedTo, type BeliefEffects, type BeliefSizes } from './belief-effects.js';
import { NOMINAL, type Voice } from './voice.js';

/**
 * Physics and practice combined: in each world the beliefs that hold there add to what physics finds. Targets come from what layouts
 * then attain, so a wish for the latest hook means the latest of that world.
 *
 * @param attained  layouts spread over all that are allowed, in the nominal world
 * @param sizes     of the beliefs, world by world
 * @param expected  mean sizes of the beliefs over worlds
 */
export function weighedVoice(
  want: Want,
  attained: readonly NominalShot[],
  effectsOf: (layout: LayoutNumbers) => BeliefEffects,
  sizes: readonly BeliefSizes[],
  expected: BeliefSizes,
): Voice {
  const sizesIn = (world: number): BeliefSizes => (world === NOMINAL ? expected : sizes[world]);
  const targets = new Map<number, readonly Target[]>();
  return {
    effectsOf,
    reached: (effects, world, byPhysics) => believedReached(byPhysics, effects, sizesIn(world)),
    outcome: (effects, world, byPhysics) => believedOutcome(byPhysics, effects, sizesIn(world)),
    targetsIn(world) {
      const known = targets.get(world);
      if (known) return known;
      const here = attained.map(({ layout, outcome }) =>
        believedReached(outcome, effectsOf(layout), sizesIn(world)),
      );
      const aimed = targetsOf(want, here);
      targets.set(world, aimed);
      return aimed;
    },
  };
}

/** What a score looks at, with what beliefs of some sizes add. */
export const believedReached = (
  { shot, reaction }: Reached,
  effects: BeliefEffects,
  sizes: BeliefSizes,
): Reached => ({
  shot,
  reaction: {
    hookStart: reaction.hookStart + addedTo('hookStart', effects, sizes),
    sharpness: reaction.sharpness + addedTo('sharpness', effects, sizes),
    totalHook: reaction.totalHook + addedTo('totalHook', effects, sizes),
    entryAngle: reaction.entryAngle,
  },
});

/** An outcome of physics with what beliefs of some sizes add. The place at the pins stays that of physics, since a bowler would aim there. */
export function believedOutcome(byPhysics: Outcome, effects: BeliefEffects, sizes: BeliefSizes): Outcome {
  const { reaction } = byPhysics;
  return {
    ...byPhysics,
    reaction: {
      ...reaction,
      hookStart: reaction.hookStart + addedTo('hookStart', effects, sizes),
      rollStart: reaction.rollStart + addedTo('rollStart', effects, sizes),
      sharpness: reaction.sharpness + addedTo('sharpness', effects, sizes),
      totalHook: reaction.totalHook + addedTo('totalHook', effects, sizes),
      flare: reaction.flare + addedTo('flare', effects, sizes),
    },
  };
}
