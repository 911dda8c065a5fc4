import { MIDDLE_LAYOUT } from '../../prepare/middle-layout.js';
import { NUMBER_OF_WISH, type WishedId } from '../../records/schemas/reaction-numbers.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import { keyOf } from '../../search/candidates/candidates.js';
import type { ScoredCache } from '../../search/outcome-cache.js';
import { wishMiss } from '../../search/scoring/score.js';
import { ARRIVES_ALIKE } from '../../search/scoring/world-statistics.js';
import { wishedInUnit } from '../../simulate/readings.js';

/** Layouts that could be recommended in place of the first, compared with it in worlds that all of them have met. */
interface Alternatives {
  /** The worlds in which all of them reach the pins, counted from the first that is not nominal. */
  readonly worlds: readonly number[];
  /** Score of each less the first's, world by world. */
  readonly ahead: readonly Float64Array[];
  /** How much nearer than the first each comes to the wish, in the units of answers, world by world. */
  readonly nearer: Readonly<Partial<Record<WishedId, readonly Float64Array[]>>>;
}

/**
 * All that met every world, may be drilled, and reach the pins about as often as the usual middle layout.
 *
 * @param first    met every world
 * @param allowed  whether a layout may be drilled
 */
export function alternativesTo(
  first: LayoutNumbers,
  cache: ScoredCache,
  allowed: (layout: LayoutNumbers) => boolean,
): Alternatives {
  const count = cache.targets.length;
  const best = cache.get(first)!;
  const least = Math.min(best.arrives, cache.get(MIDDLE_LAYOUT)?.arrives ?? 0) - ARRIVES_ALIKE;
  const others = cache
    .known()
    .filter(
      ({ layout, worlds }) =>
        worlds.scores.length === count &&
        worlds.arrives >= least &&
        keyOf(layout) !== keyOf(first) &&
        allowed(layout),
    )
    .map(({ worlds }) => worlds);
  const worlds = cache.targets
    .map((_, world) => world)
    .filter((world) => [best, ...others].every(({ scores }) => scores[world] !== null));
  const wishes = cache.targets[0] ?? [];
  const nearer = wishes.map(({ wish }, t): [WishedId, Float64Array[]] => {
    const offIn = ({ outcomes }: typeof best, world: number): number => {
      const target = cache.targets[world][t];
      return wishedInUnit(wish, Math.abs(wishMiss(outcomes[world], target)) * (target.high - target.low));
    };
    const rows = others.map((other) =>
      Float64Array.from(worlds, (world) => offIn(best, world) - offIn(other, world)),
    );
    return [NUMBER_OF_WISH[wish], rows];
  });
  return {
    worlds,
    ahead: others.map(({ scores }) =>
      Float64Array.from(worlds, (world) => scores[world]! - best.scores[world]!),
    ),
    nearer: Object.fromEntries(nearer),
  };
}
