import type { LayoutNumbers } from '../records/text/layout-text.js';
import type { Setting } from '../simulate/setting.js';
import type { Outcome } from '../simulate/simulator.js';
import type { NominalShot } from './candidates/nominal-shots.js';
import type { ScoredCache } from './outcome-cache.js';
import type { ScoredOutcomes } from './scoring/world-statistics.js';

/** A layout with what it does in the nominal world and in all others. */
export interface LayoutOutcomes {
  readonly layout: LayoutNumbers;
  readonly nominal: Outcome;
  readonly worlds: ScoredOutcomes;
}

/** Simulates layouts, and the usual middle layout beside them, in every world that they have not met yet. */
export async function simulateLayouts(
  shots: readonly NominalShot[],
  cache: ScoredCache,
  { problem, progress }: Pick<Setting, 'problem' | 'progress'>,
): Promise<{ rows: readonly LayoutOutcomes[]; middle: LayoutOutcomes }> {
  const all = [...shots, cache.middle];
  const count = problem.luck.length;
  const missing = all.map(({ layout }) => count - (cache.get(layout)?.scores.length ?? 0));
  const total = missing.reduce((sum, each) => sum + each, 0);
  const report = progress('worlds');
  let done = 0;
  await cache.roll(all, count, (more) => {
    done += more;
    report(done, total);
  });
  const rows = all.map(({ layout, outcome }) => ({
    layout,
    nominal: outcome,
    worlds: cache.get(layout)!,
  }));
  return { rows: rows.slice(0, -1), middle: rows[shots.length] };
}
