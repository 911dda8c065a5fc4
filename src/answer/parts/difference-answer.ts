import { fromKeys } from '../../base/from-keys.js';
import type { LayoutDifference } from '../../records/answers/answer.js';
import { WISHED_IDS, type WishedId } from '../../records/schemas/reaction-numbers.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import type { ScoredCache } from '../../search/outcome-cache.js';
import { meanDifferences, shareAbove } from '../../search/scoring/world-statistics.js';
import type { VoicesResult } from '../../search/search.js';
import { type Sizes, visibility } from '../../search/visibility.js';
import { addedInUnit } from '../../search/voices/belief-effects.js';
import { MIDDLE_SIZES } from '../../search/voices/draw-beliefs.js';

/** Share of worlds in which a layout is ahead of another by physics alone, each having met all worlds. */
export const aheadByPhysics = (
  { byPhysics }: Pick<VoicesResult, 'byPhysics'>,
  layout: LayoutNumbers,
  from: LayoutNumbers,
): number => shareAbove(byPhysics.get(layout)!, byPhysics.get(from)!);

/**
 * Prepares to say how far a layout differs from another, each having met all worlds.
 *
 * @param ids      the numbers that are wished for
 * @param scatter  of the bowler's shots
 */
export function differences(
  { byBoth, byPhysics, beliefs }: Pick<VoicesResult, 'byBoth' | 'byPhysics' | 'beliefs'>,
  ids: readonly WishedId[],
  scatter: Sizes,
): (layout: LayoutNumbers, from: LayoutNumbers) => LayoutDifference {
  const seen = (size: Sizes) => ({ size, visibility: visibility(size, scatter, ids) });
  const between = (cache: ScoredCache, a: LayoutNumbers, b: LayoutNumbers): Sizes => {
    const [own, other] = [a, b].map((layout) => cache.get(layout)!);
    return meanDifferences(WISHED_IDS, own, other);
  };
  const believed = (layout: LayoutNumbers, id: WishedId): number =>
    addedInUnit(id, beliefs.effectsOf(layout), MIDDLE_SIZES);
  return (layout, from) => ({
    weighed: seen(between(byBoth, layout, from)),
    physics: seen(between(byPhysics, layout, from)),
    practice: seen(fromKeys(WISHED_IDS, (id) => believed(layout, id) - believed(from, id))),
  });
}
