import type { LayoutNumbers } from '../../records/text/layout-text.js';
import type { Reached } from '../../simulate/readings.js';
import type { Outcome } from '../../simulate/simulator.js';
import type { Target } from '../scoring/target.js';
import type { BeliefEffects } from './belief-effects.js';

/** Index of the nominal world; the others count from 0. */
export const NOMINAL = -1;

/**
 * One reading of the shots of physics: as they are, or changed in each world by the beliefs of practice that hold there. Worlds are
 * counted from the first that is not nominal; in the nominal one each belief counts with the middle of its sizes times its chance.
 */
export interface Voice {
  /** The effects of the beliefs on a layout; computed once for each layout and used for thousands of shots. */
  effectsOf(layout: LayoutNumbers): BeliefEffects;
  /** The numbers that a score depends on, as this voice reads them; the next call may use the same object again. */
  reached(effects: BeliefEffects, world: number, byPhysics: Reached): Reached;
  /** All numbers of a shot, as this voice reads them. */
  outcome(effects: BeliefEffects, world: number, byPhysics: Outcome): Outcome;
  /** What the wishes aim for: what layouts of this ball attain in a world, by this voice. */
  targetsIn(world: number): readonly Target[];
}
