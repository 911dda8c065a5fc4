import type { Target } from '../scoring/target.js';
import type { BeliefEffects } from './belief-effects.js';
import type { Voice } from './voice.js';

const NO_EFFECTS: BeliefEffects = new Float64Array(0);

/** Physics alone: every shot as the engine computes it. */
export const physicsVoice = (targets: readonly Target[]): Voice => ({
  effectsOf: () => NO_EFFECTS,
  reached: (_effects, _world, byPhysics) => byPhysics,
  outcome: (_effects, _world, byPhysics) => byPhysics,
  targetsIn: () => targets,
});
