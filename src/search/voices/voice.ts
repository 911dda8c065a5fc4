import type { LayoutNumbers } from '../../records/text/layout-text.js';
import type { Reached } from '../../simulate/readings.js';
import type { Outcome } from '../../simulate/simulator.js';
import type { Target } from '../scoring/target.js';
import type { BeliefEffects } from './belief-effects.js';

/** Stands for the nominal world among those counted from 0. */
export const NOMINAL = -1;

/**
 * How the same shots of physics are read: as they are, or moved in each world by the beliefs of practice that hold there. Worlds are
 * counted from the first that is not nominal; in the nominal one each belief counts by its chance and the middle of its sizes.
 */
export interface Voice {
  /** What a layout has to do with beliefs; asked once a layout, for thousands of shots. */
  effectsOf(layout: LayoutNumbers): BeliefEffects;
  /** The numbers that a score looks at, as this voice has them; may be an object that the next call uses again. */
  reached(effects: BeliefEffects, world: number, byPhysics: Reached): Reached;
  /** All numbers of a shot, as this voice has them. */
  outcome(effects: BeliefEffects, world: number, byPhysics: Outcome): Outcome;
  /** What the wishes aim for: what layouts of this ball attain in a world, by this voice. */
  targetsIn(world: number): readonly Target[];
}
