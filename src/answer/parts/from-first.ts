import { fromKeys } from '../../base/from-keys.js';
import { BELIEVED_COMPARED_IDS, type FromFirst } from '../../records/answers/compare-answer.js';
import { COMPARED_IDS, type ComparedId, WISHED_IDS } from '../../records/schemas/reaction-numbers.js';
import {
  meanDifferences,
  pairedTwentieths,
  type ScoredOutcomes,
  shareAbove,
} from '../../search/scoring/world-statistics.js';
import { visibility } from '../../search/visibility.js';
import { addedInUnit, type BeliefEffects } from '../../search/voices/belief-effects.js';
import { MIDDLE_SIZES } from '../../search/voices/draw-beliefs.js';
import type { ShotScatter } from '../../simulate/shot-scatter.js';

/** One of those that are compared, in the same worlds as the others, as each voice has them. */
export interface Scored {
  readonly name: string;
  readonly weighed: ScoredOutcomes;
  readonly physics: ScoredOutcomes;
  readonly effects: BeliefEffects;
}

/** How one differs from the first. */
export function fromFirst(own: Scored, first: Scored, scatter: ShotScatter, hasWish: boolean): FromFirst {
  const seen = <K extends ComparedId>(ids: readonly K[], size: Record<K, number>) => ({
    size,
    visibility: fromKeys(ids, (id) => visibility(size, scatter, [id])),
  });
  const believed = (effects: BeliefEffects, id: (typeof BELIEVED_COMPARED_IDS)[number]): number =>
    addedInUnit(id, effects, MIDDLE_SIZES);
  return {
    weighed: seen(COMPARED_IDS, meanDifferences(COMPARED_IDS, own.weighed, first.weighed)),
    physics: seen(COMPARED_IDS, meanDifferences(COMPARED_IDS, own.physics, first.physics)),
    paired: pairedTwentieths(WISHED_IDS, own.weighed, first.weighed),
    practice: seen(
      BELIEVED_COMPARED_IDS,
      fromKeys(BELIEVED_COMPARED_IDS, (id) => believed(own.effects, id) - believed(first.effects, id)),
    ),
    ahead: hasWish ? shareAbove(own.weighed, first.weighed) : null,
    aheadByPhysics: hasWish ? shareAbove(own.physics, first.physics) : null,
  };
}
