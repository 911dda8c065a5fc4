import { counted } from '../base/counted.js';
import type { Want } from '../records/schemas/want.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import type { Setting } from '../simulate/setting.js';
import { markableOf } from './candidates/constraints.js';
import { drilledGrid } from './candidates/drilled-grid.js';
import { type NominalShot, type NominalShots, nominalShots } from './candidates/nominal-shots.js';
import { cacheOutcomes, type OutcomeCache } from './outcome-cache.js';
import { type Target, targetsOf } from './scoring/target.js';

/** What all voices start from. */
export interface SearchStart {
  /** Layouts the trade drills at marking resolution, before any was set aside. */
  readonly candidates: number;
  /** Those whose marks keep clear of the holes. */
  readonly markable: readonly LayoutNumbers[];
  /** Shots in the nominal world. */
  readonly nominal: NominalShots;
  /** What the allowed layouts of the coarse, even grid do there: the range of this ball. */
  readonly attained: readonly NominalShot[];
  /** By physics, in the nominal world. */
  readonly targets: readonly Target[];
  /** Shots in all other worlds. */
  readonly outcomes: OutcomeCache;
}

/** Rolls the coarse grid in the nominal world, turns the wishes into targets by its quantiles, and rolls the usual layout in all worlds. */
export async function startSearch(want: Want, setting: Setting): Promise<SearchStart> {
  const { budget, progress } = setting;
  const coarse = drilledGrid(budget.grid.coarse, setting);
  const finest = drilledGrid(budget.grid.finest, setting);
  const nominal = nominalShots(setting);
  await nominal.roll(coarse, counted(progress('layouts'), coarse.length));
  const attained = nominal.allowed();
  return {
    candidates: finest.length,
    markable: markableOf(finest, setting),
    nominal,
    attained,
    targets: targetsOf(
      want,
      attained.map(({ outcome }) => outcome),
    ),
    outcomes: await cacheOutcomes(setting),
  };
}
