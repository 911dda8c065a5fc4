import type { RemedyAnswer } from '../../records/answers/adjust-answer.js';
import type { RemedyKind } from '../../records/answers/statements/adjustments.js';
import type { ShotScatter } from '../../simulate/shot-scatter.js';
import type { Outcome } from '../../simulate/simulator.js';
import { isUndone, orderRemedies, recommended } from './order-remedies.js';
import type { RolledRemedy } from './rolled-remedies.js';
import { type WantedChange, weighRemedy } from './weigh-remedy.js';

const COST: Readonly<Record<RemedyKind, RemedyAnswer['cost']>> = {
  'move-on-lane': 'free',
  'another-drilled-ball': 'free',
  refinish: 'minutes',
  'speed-by': 'practice',
  'plug-and-redrill': 'plugging',
};

/**
 * All remedies in the order in which they should be tried, those recommended with their rank.
 *
 * @param before  the ball as it is, in the same worlds
 */
export function remedyAnswers(
  rolled: readonly RolledRemedy[],
  before: readonly Outcome[],
  wanted: WantedChange,
  scatter: ShotScatter,
): readonly RemedyAnswer[] {
  const weighed = rolled.map(({ remedy, outcomes, reachesPocket }) => {
    const own = weighRemedy(outcomes, before, wanted, scatter);
    const verdict = reachesPocket ? own.verdict : ('no-line' as const);
    return { ...own, remedy, kind: remedy.code, verdict };
  });
  const ordered = orderRemedies(weighed);
  const best = recommended(ordered);
  return ordered.map((each) => {
    const { kind, ...answer } = each;
    const place = best.indexOf(each);
    return {
      ...answer,
      left: { ...answer.left },
      cost: COST[kind],
      isUndone: isUndone(kind),
      rank: place < 0 ? null : place + 1,
    };
  });
}
