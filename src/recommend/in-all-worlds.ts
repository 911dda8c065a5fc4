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

/** Simulates layouts, and the usual middle layout beside them, in every world; all meet the same worlds. */
export async function simulateInWorlds(
  layouts: readonly LayoutNumbers[],
  targets: readonly Target[],
  { problem, evaluator, progress }: Setting,
): Promise<{ rows: readonly InAllWorlds[]; middle: InAllWorlds }> {
  const { radius } = problem.ball.published;
  const all = [...layouts, MIDDLE_LAYOUT];
  const worlds = problem.worlds.map((_, world) => world);
  const trialsOf = (layout: LayoutNumbers, within: readonly number[]): readonly Trial[] =>
    within.map((world) => ({ layout: toLayout(layout, radius), world }));
  const trials = [
    ...all.flatMap((layout) => trialsOf(layout, worlds)),
    ...trialsOf(
      MIDDLE_LAYOUT,
      problem.luck.map((_, i) => worlds.length + i),
    ),
  ];
  const report = progress('worlds');
  let done = 0;
  const outcomes = await evaluator.evaluate(trials, (count) => {
    done += count;
    report(done, trials.length);
  });
  const outcomesOf = (i: number): readonly Outcome[] =>
    outcomes.slice(i * worlds.length, (i + 1) * worlds.length);
  const [middleNominal] = outcomesOf(all.length - 1);
  const luck = outcomes.slice(all.length * worlds.length);
  const rows = all.map((layout, i): InAllWorlds => {
    const [nominal, ...others] = outcomesOf(i);
    return { layout, nominal, worlds: inWorlds(others, luck, middleNominal, targets) };
  });
  return { rows: rows.slice(0, -1), middle: rows[rows.length - 1] };
}
