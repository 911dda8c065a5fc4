import { objections } from './constraints.js';
import { type InAllWorlds, simulateInWorlds } from './in-all-worlds.js';
import { shareAbove } from './in-worlds.js';
import { MIDDLE_LAYOUT } from './middle-layout.js';
import { pickDiffering } from './pick-differing.js';
import type { SearchResult } from './search.js';
import type { Setting } from './setting.js';

export interface Ranked extends InAllWorlds {
  /** Share of worlds in which it scores above the next in rank, and above the usual middle layout. */
  readonly beatsNext: number;
  readonly beatsMiddle: number;
}

/** More finalists than answers: luck in the nominal world must not decide who is shown. */
const FINALISTS_PER_ANSWER = 2;

/**
 * Ranks the finalists, which differ from one another, by their mean score over all worlds. The usual middle
 * layout takes part where it may be drilled.
 */
export async function rankInWorlds(
  { found, targets }: SearchResult,
  top: number,
  setting: Setting,
): Promise<{ ranked: readonly Ranked[]; runnerUp: InAllWorlds | null; middle: InAllWorlds }> {
  const finalists = pickDiffering(found, top * FINALISTS_PER_ANSWER).map(({ layout }) => layout);
  const { rows, middle } = await simulateInWorlds(finalists, targets, setting);
  const isAllowed = objections(MIDDLE_LAYOUT, middle.nominal, setting).length === 0;
  const contenders = isAllowed ? [...rows, middle] : [...rows];
  const order = pickDiffering(
    contenders.sort((a, b) => b.worlds.meanScore - a.worlds.meanScore),
    contenders.length,
  );
  const ranked = order.slice(0, top).map((row, i) => ({
    ...row,
    beatsNext: order[i + 1] ? shareAbove(row.worlds, order[i + 1].worlds) : 1,
    beatsMiddle: shareAbove(row.worlds, middle.worlds),
  }));
  return { ranked, runnerUp: order[top] ?? null, middle };
}
