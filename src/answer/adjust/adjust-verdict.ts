import { fromKeys } from '../../base/from-keys.js';
import { hypot } from '../../math/hypot.js';
import type { AdjustAnswer, RemedyAnswer } from '../../records/answers/adjust-answer.js';
import { IN_A_GAME, IN_A_NIGHT } from '../../records/answers/parts/over-scatter.js';
import type { AdjustRemark } from '../../records/answers/statements/adjust-remarks.js';
import { LANE_IDS, type WishedId } from '../../records/schemas/reaction-numbers.js';
import type { ShotScatter } from '../../simulate/shot-scatter.js';

interface Judged {
  readonly wished: readonly AdjustAnswer['wished'][number][];
  readonly remedies: readonly RemedyAnswer[];
  /** How far the ball is from the wish now, in deviations of the bowler's shots. */
  readonly miss: number;
  readonly scatter: ShotScatter;
  readonly reachesPocket: boolean;
  readonly worlds: number;
}

/** What to do first, or that nothing needs to be done or can be done; and where the simulation differs from what the ball did. */
export function adjustVerdict({
  wished,
  remedies,
  miss,
  scatter,
  reachesPocket,
  worlds,
}: Judged): AdjustRemark[] {
  const unlike = wished.flatMap(({ reading, did, simulated, deviation }): AdjustRemark[] =>
    Math.abs(did - simulated) > IN_A_GAME * hypot(scatter[reading], deviation ?? 0)
      ? [{ code: 'not-as-simulated', params: { reading, did, simulated } }]
      : [],
  );
  return [
    ...(reachesPocket ? [] : [{ code: 'no-line-now', params: {} } as const]),
    miss < IN_A_NIGHT ? { code: 'does-it-already', params: {} } : firstOf(remedies, worlds),
    ...unlike,
  ];
}

function firstOf(remedies: readonly RemedyAnswer[], worlds: number): AdjustRemark {
  const first = remedies.find(({ rank }) => rank === 1);
  if (!first) return { code: 'none-helps', params: { tried: remedies.length } };
  const { remedy, effect, nearer } = first;
  const left = (Object.entries(first.left) as [WishedId, number][]).map(([reading, by]) => ({ reading, by }));
  return first.isUndone
    ? {
        code: 'try-first',
        params: { remedy, effect: fromKeys(LANE_IDS, (id) => effect[id]), left, nearer, worlds },
      }
    : { code: 'only-redrill', params: { remedy, left } };
}
