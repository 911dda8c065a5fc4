import type { LayoutNumbers } from '../records/layout-text.js';
import type { Evaluator, Trial } from './evaluator.js';
import { type InWorlds, inWorlds, shareAbove } from './in-worlds.js';
import { MIDDLE_LAYOUT } from './middle-layout.js';
import { pickDiffering, type SearchResult } from './search.js';
import type { ShotProblem } from './shot-problem.js';
import type { Outcome } from './simulator.js';
import { toLayout } from './to-layout.js';

/** A layout with what it does in the nominal world and in all others. */
export interface InAllWorlds {
  readonly layout: LayoutNumbers;
  readonly nominal: Outcome;
  readonly worlds: InWorlds;
}

export interface Ranked extends InAllWorlds {
  /** Share of worlds in which it scores above the next in rank, and above the usual middle layout. */
  readonly beatsNext: number;
  readonly beatsMiddle: number;
}

/** More finalists than answers: luck in the nominal world must not decide who is shown. */
const FINALISTS_PER_ANSWER = 2;

/**
 * Simulates the finalists, which differ from one another, in every world, and ranks them by their mean
 * score. The usual middle layout takes part where it may be drilled. Two layouts always meet the same worlds.
 */
export async function rankInWorlds(
  problem: ShotProblem,
  result: SearchResult,
  evaluator: Evaluator,
  top: number,
  isAllowed: (middle: Outcome) => boolean,
  onProgress?: (done: number, total: number) => void,
): Promise<{ ranked: readonly Ranked[]; runnerUp: InAllWorlds | null; middle: InAllWorlds }> {
  const { radius } = problem.ball.published;
  const finalists = pickDiffering(result.found, top * FINALISTS_PER_ANSWER);
  const layouts = [...finalists.map(({ layout }) => layout), MIDDLE_LAYOUT];
  const worlds = problem.worlds.map((_, world) => world);
  const trialsOf = (layout: LayoutNumbers, in_: readonly number[]): readonly Trial[] =>
    in_.map((world) => ({ layout: toLayout(layout, radius), world }));
  const trials = [
    ...layouts.flatMap((layout) => trialsOf(layout, worlds)),
    ...trialsOf(
      MIDDLE_LAYOUT,
      problem.luck.map((_, i) => worlds.length + i),
    ),
  ];
  let done = 0;
  const outcomes = await evaluator.evaluate(trials, (n) => {
    done += n;
    onProgress?.(done, trials.length);
  });

  const outcomesOf = (i: number): readonly Outcome[] =>
    outcomes.slice(i * worlds.length, (i + 1) * worlds.length);
  const [middleNominal] = outcomesOf(layouts.length - 1);
  const luck = outcomes.slice(layouts.length * worlds.length);
  const rows = layouts.map((layout, i): InAllWorlds => {
    const [nominal, ...others] = outcomesOf(i);
    return { layout, nominal, worlds: inWorlds(others, luck, middleNominal, result.targets) };
  });
  const middle = rows[rows.length - 1];
  const contenders = isAllowed(middle.nominal) ? rows : rows.slice(0, -1);
  const order = pickDiffering(
    [...contenders].sort((a, b) => b.worlds.meanScore - a.worlds.meanScore),
    contenders.length,
  );
  const ranked = order.slice(0, top).map((row, i) => ({
    ...row,
    beatsNext: order[i + 1] ? shareAbove(row.worlds, order[i + 1].worlds) : 1,
    beatsMiddle: shareAbove(row.worlds, middle.worlds),
  }));
  return { ranked, runnerUp: order[top] ?? null, middle };
}
