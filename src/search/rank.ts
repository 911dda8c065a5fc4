import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import type { Setting } from '../simulate/setting.js';
import { keyOf } from './candidates/candidates.js';
import { objections } from './candidates/constraints.js';
import { pickDiffering } from './candidates/pick-differing.js';
import { controlVariates } from './scoring/control-variates.js';
import type { KnownValue } from './scoring/krige.js';
import { shareAbove } from './scoring/world-statistics.js';
import type { Found, SearchResult } from './search.js';
import { type LayoutOutcomes, simulateLayouts } from './simulate-layouts.js';

export interface Ranked extends LayoutOutcomes {
  /** Share of worlds in which it scores above the next in rank, and above the usual middle layout. */
  readonly beatsNext: number;
  readonly beatsMiddle: number;
}

/** Standard errors within which a layout cannot be told from the leader. */
const ALIKE = 1.5;

/** Points of score that need not be told apart. */
const NO_MATTER = 0.5;

/**
 * What went through all worlds, best first: the best few, more of them where luck is great, and
 * the best that differ.
 *
 * @param count  how many that differ
 */
export async function finals(
  { found, cache, surveyed }: SearchResult,
  count: number,
  setting: Setting,
): Promise<{ rows: readonly LayoutOutcomes[]; middle: LayoutOutcomes }> {
  const { semifinal, final } = setting.budget;
  const controlScores = 'ranked' in surveyed ? surveyed.scores : undefined;
  const paired = (): readonly KnownValue[] =>
    cache.known().length > 0 ? controlVariates(cache.known(), controlScores).rows : [];
  const contenders = union(
    hardToTell(found, paired(), semifinal),
    pickDiffering(found, count + semifinal.moreThanShown),
  );
  await cache.roll(contenders, semifinal.worlds);
  const mean = ({ layout }: Found): number => cache.get(layout)!.meanScore;
  const order = [...contenders].sort((a, b) => mean(b) - mean(a));
  const finalists = union(hardToTell(order, paired(), final), pickDiffering(order, count));
  const { rows, middle } = await simulateLayouts(finalists, cache, setting);
  return { rows: [...rows].sort((a, b) => b.worlds.meanScore - a.worlds.meanScore), middle };
}

/** Those of a list, best first, that cannot be told from the leader in the worlds met so far, within limits. */
function hardToTell(
  list: readonly Found[],
  known: readonly KnownValue[],
  { least, most }: { readonly least: number; readonly most: number },
): readonly Found[] {
  const alike = new Set(
    known
      .filter(({ value, variance }) => value + ALIKE * Math.sqrt(variance) >= NO_MATTER)
      .map(({ layout }) => keyOf(layout)),
  );
  return union(
    list.slice(0, least),
    list.filter(({ layout }) => alike.has(keyOf(layout))),
  ).slice(0, most);
}

const union = <T>(...lists: readonly (readonly T[])[]): T[] => [...new Set(lists.flat())];

/**
 * Ranks layouts that differ from one another by their mean score over all worlds. The usual middle layout takes part
 * where it may be drilled.
 */
export async function rankInWorlds(
  result: SearchResult,
  top: number,
  setting: Setting,
): Promise<{ ranked: readonly Ranked[]; runnerUp: LayoutOutcomes | null; middle: LayoutOutcomes }> {
  const { rows, middle } = await finals(result, top + 1, setting);
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
