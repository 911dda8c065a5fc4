import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import type { Setting } from '../simulate/setting.js';
import { keyOf } from './candidates/candidates.js';
import { objections } from './candidates/constraints.js';
import type { NominalShot } from './candidates/nominal-shots.js';
import { pickDiffering } from './candidates/pick-differing.js';
import { inOrder, type OrderRules } from './order.js';
import type { Found, SearchResult } from './race.js';
import { controlVariates } from './scoring/control-variates.js';
import type { KnownValue } from './scoring/krige.js';
import { arrivesAlike } from './scoring/world-statistics.js';
import { type LayoutOutcomes, simulateLayouts } from './simulate-layouts.js';

/** A layout within this many standard errors of the leader may be as good. */
const ALIKE = 1.5;

/** Points of score that do not matter. */
const NO_MATTER = 0.5;

/** How often a list is searched for layouts that should also have been picked. */
const LOOKS = 4;

/**
 * The layouts that meet all worlds: the best few, more of them where luck is great, and the best that differ. A layout that turns out
 * to belong among these is added.
 *
 * @param count  how many that differ
 */
export async function finals(
  result: SearchResult,
  count: number,
  setting: Setting,
): Promise<{ rows: readonly LayoutOutcomes[]; middle: LayoutOutcomes }> {
  const { found, cache } = result;
  const { heats, final } = setting.budget;
  const worlds = setting.problem.luck.length;
  let ahead = found;
  for (const heat of heats)
    ahead = await advance(result, ahead, Math.min(heat.worlds, worlds), (order, known) =>
      union(hardToTell(order, known, heat), pickDiffering(order, count + heat.moreThanShown)),
    );
  const finalists = await advance(result, ahead, worlds, (order, known) =>
    union(hardToTell(order, known, final), pickDiffering(order, count)),
  );
  const arriving = finalists.filter(({ layout }) => arrivesAlike(cache.get(layout)!, cache.middleArrives));
  if (pickDiffering(arriving, count).length === count) return simulateLayouts(finalists, cache, setting);
  // all worlds show that too few of them reach the pins as often as the usual: others may
  const others = found.filter(({ layout }) => !cache.get(layout));
  const more = await advance(result, [...finalists, ...others], worlds, (order) =>
    pickDiffering(order, count),
  );
  return simulateLayouts(more, cache, setting);
}

/**
 * Rolls the layouts picked from a list in a number of worlds, then picks again, since the new outcomes may change the choice.
 *
 * @returns all that met that number of worlds, best first
 */
async function advance(
  { cache, surveyed }: SearchResult,
  list: readonly Found[],
  worlds: number,
  pick: (order: readonly Found[], known: readonly KnownValue[]) => readonly Found[],
): Promise<readonly Found[]> {
  const controlScores = 'ranked' in surveyed ? surveyed.scores : undefined;
  const hasMet = ({ layout }: Found): boolean => (cache.get(layout)?.scores.length ?? 0) >= worlds;
  const bestFirst = (): { order: readonly Found[]; known: readonly KnownValue[] } => {
    const met = cache.known();
    if (met.length === 0) return { order: list, known: [] };
    const arrivals = new Map(
      met.map(({ layout, worlds }) => [keyOf(layout), arrivesAlike(worlds, cache.middleArrives)]),
    );
    const arriving = met.filter(({ layout }) => arrivals.get(keyOf(layout)));
    const { leader, rows } = controlVariates(arriving.length > 0 ? arriving : met, controlScores);
    const arrives = likelyArrives(list, arrivals, cache.middle);
    const values = new Map(rows.map(({ layout, value }) => [keyOf(layout), leader.worlds.meanScore + value]));
    const standsAt = (row: Found): number =>
      (hasMet(row) ? values.get(keyOf(row.layout)) : undefined) ?? row.expected;
    const order = [...list].sort(
      (a, b) => Number(arrives(b)) - Number(arrives(a)) || standsAt(b) - standsAt(a),
    );
    return { order, known: rows };
  };
  for (let look = 0; look < LOOKS; look++) {
    const { order, known } = bestFirst();
    const lacking = pick(order, known).filter((row) => !hasMet(row));
    if (lacking.length === 0) break;
    await cache.roll(lacking, worlds);
  }
  return bestFirst().order.filter(hasMet);
}

/**
 * Which layouts reach the pins about as often as the usual one. A layout that has met no world is expected to if its nominal path keeps
 * as far from the gutter as those that do, or lies no farther out than half-way to the next that does not.
 *
 * @param arrivals  by key, of those that have met worlds
 */
function likelyArrives(
  list: readonly Found[],
  arrivals: ReadonlyMap<string, boolean>,
  middle: NominalShot,
): (row: Found) => boolean {
  const widest = ({ outcome }: NominalShot): number => outcome.reaction.breakpointX;
  const widestOf = (arrives: boolean): number[] =>
    list.filter(({ layout }) => arrivals.get(keyOf(layout)) === arrives).map(widest);
  const within = Math.max(widest(middle), ...widestOf(true));
  const next = Math.min(...widestOf(false).filter((x) => x > within));
  const limit = Number.isFinite(next) ? (within + next) / 2 : within;
  return (row) => arrivals.get(keyOf(row.layout)) ?? widest(row) <= limit;
}

/** The layouts of a list, best first, that may be as good as the leader by the worlds met so far; at least `least`, at most `most`. */
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

/** Layouts that differ from one another, best first. */
export interface Ranking {
  readonly ranked: readonly LayoutOutcomes[];
  /** The next after those ranked; null when there is none. */
  readonly runnerUp: LayoutOutcomes | null;
  readonly middle: LayoutOutcomes;
}

/** Ranks layouts that differ from one another over all worlds. The usual middle layout takes part where it may be drilled. */
export async function rankInWorlds(
  result: SearchResult,
  top: number,
  setting: Setting,
  rules: OrderRules,
): Promise<Ranking> {
  const { rows, middle } = await finals(result, top + 1, setting);
  const isAllowed = objections(MIDDLE_LAYOUT, middle.nominal, setting).length === 0;
  const order = inOrder(
    isAllowed && !rows.some(({ layout }) => keyOf(layout) === keyOf(MIDDLE_LAYOUT))
      ? [...rows, middle]
      : rows,
    middle,
    rules,
  );
  return { ranked: order.slice(0, top), runnerUp: order[top] ?? null, middle };
}
