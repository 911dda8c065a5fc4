import { fromKeys } from '../base/from-keys.js';
import type { LayoutDifference, LeverEffect, ReactionAnswer } from '../records/answers/answer.js';
import type { CoachPair } from '../records/answers/coach-answer.js';
import { IN_A_NIGHT, overScatter } from '../records/answers/parts/over-scatter.js';
import type { PairRemarks } from '../records/answers/statements/coach-remarks.js';
import { WISHED_IDS, type WishedId } from '../records/schemas/reaction-numbers.js';

type Way = PairRemarks['moves-most']['ways'][number];

interface Rolled {
  readonly layout: string;
  readonly score: number;
  readonly reaction: ReactionAnswer;
}

/**
 * What moves the wished numbers farthest beside the scatter of shots, toward the wish or away from it: the best layout, from the
 * usual one, or one of the levers, from the best layout; of each kind the one that moves them farthest.
 */
export function whatMoves(
  {
    best,
    usual,
    overMiddle,
    levers,
  }: {
    readonly best: Rolled;
    readonly usual: Rolled;
    readonly overMiddle: LayoutDifference | null;
    readonly levers: readonly LeverEffect[];
  },
  scatter: CoachPair['scatter'],
  ids: readonly WishedId[],
): Pick<CoachPair, 'advice' | 'says'> {
  const way = (kind: Way['kind'], what: Way['what'], size: Way['size'], gain: number): Way => ({
    kind,
    what,
    size,
    overScatter: overScatter(size, scatter, ids),
    gain,
  });
  const all = [
    ...(overMiddle
      ? [way('layout', { layout: best.layout }, overMiddle.weighed.size, best.score - usual.score)]
      : []),
    ...levers.map(({ kind, change, reaction, score }) => {
      const size = fromKeys(WISHED_IDS, (id) => reaction[id] - best.reaction[id]);
      return way(kind, { lever: change }, size, score - best.score);
    }),
  ].sort((a, b) => b.overScatter - a.overScatter);
  const ways = all.filter((each, i) => all.findIndex(({ kind }) => kind === each.kind) === i);
  const [most] = ways;
  const params = { readings: [...ids], ways };
  return most && most.overScatter >= IN_A_NIGHT
    ? { advice: most.kind, says: { code: 'moves-most', params } }
    : { advice: 'none', says: { code: 'nothing-moves-much', params } };
}
