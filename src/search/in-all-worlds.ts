import type { LayoutNumbers } from '../records/text/layout-text.js';
import type { Setting } from '../simulate/setting.js';
import type { Outcome } from '../simulate/simulator.js';
import type { NominalShot } from './candidates/nominal-shots.js';
import type { InWorlds } from './scoring/in-worlds.js';
import type { WorldShots } from './world-shots.js';

/** A layout with what it does in the nominal world and in all others. */
export interface InAllWorlds {
  readonly layout: LayoutNumbers;
  readonly nominal: Outcome;
  readonly worlds: InWorlds;
}

/** Simulates layouts, and the usual middle layout beside them, in every world that they have not met yet. */
export async function simulateInWorlds(
  shots: readonly NominalShot[],
  inWorlds: WorldShots,
  { problem, progress }: Pick<Setting, 'problem' | 'progress'>,
): Promise<{ rows: readonly InAllWorlds[]; middle: InAllWorlds }> {
  const all = [...shots, inWorlds.middle];
  const count = problem.luck.length;
  const missing = all.map(({ layout }) => count - (inWorlds.get(layout)?.scores.length ?? 0));
  const total = missing.reduce((sum, each) => sum + each, 0);
  const report = progress('worlds');
  let done = 0;
  await inWorlds.roll(all, count, (more) => {
    done += more;
    report(done, total);
  });
  const rows = all.map(({ layout, outcome }) => ({
    layout,
    nominal: outcome,
    worlds: inWorlds.get(layout)!,
  }));
  return { rows: rows.slice(0, -1), middle: rows[shots.length] };
}
