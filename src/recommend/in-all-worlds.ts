import type { LayoutNumbers } from '../records/layout-text.js';
import type { Trial } from './evaluator.js';
import { type InWorlds, inWorlds } from './in-worlds.js';
import { MIDDLE_LAYOUT } from './middle-layout.js';
import type { Setting } from './setting.js';
import type { Outcome } from './simulator.js';
import type { Target } from './target.js';
import { toLayout } from './to-layout.js';

/** A layout with what it does in the nominal world and in all others. */
export interface InAllWorlds {
  readonly layout: LayoutNumbers;
  readonly nominal: Outcome;
  readonly worlds: InWorlds;
}

/**
 * Simulates layouts, and the usual middle layout beside them, in every world; all meet the same worlds.
 *
 * Each is played on its own line throughout: that of its nominal shot. Luck makes it miss.
 */
export async function simulateInWorlds(
  layouts: readonly LayoutNumbers[],
  targets: readonly Target[],
  { problem, evaluator, progress }: Setting,
): Promise<{ rows: readonly InAllWorlds[]; middle: InAllWorlds }> {
  const { radius } = problem.ball.published;
  const all = [...layouts, MIDDLE_LAYOUT];
  const marked = all.map((layout) => toLayout(layout, radius));
  const nominals = await evaluator.evaluate(marked.map((layout) => ({ layout, world: 0 })));
  const trialsOf = (i: number, from: number, count: number): readonly Trial[] =>
    Array.from({ length: count }, (_, k) => ({
      layout: marked[i],
      world: from + k,
      launch: nominals[i].launch,
    }));
  const count = problem.luck.length;
  const middle = all.length - 1;
  const trials = [
    ...all.flatMap((_, i) => trialsOf(i, 1, count)),
    ...trialsOf(middle, problem.worlds.length, count),
  ];
  const report = progress('worlds');
  let done = 0;
  const outcomes = await evaluator.evaluate(trials, (count) => {
    done += count;
    report(done, trials.length);
  });
  const outcomesOf = (i: number): readonly Outcome[] => outcomes.slice(i * count, (i + 1) * count);
  const luck = outcomesOf(all.length);
  const rows = all.map((layout, i): InAllWorlds => {
    const worlds = inWorlds(outcomesOf(i), luck, nominals[middle], targets);
    return { layout, nominal: nominals[i], worlds };
  });
  return { rows: rows.slice(0, -1), middle: rows[middle] };
}
