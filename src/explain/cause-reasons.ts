import type { CausesAnswer, CausesOf, TargetAnswer } from '../records/answers/answer.js';
import { CAUSES, type Cause } from '../records/answers/statements/ids.js';
import type { Reason } from '../records/answers/statements/reasons.js';
import type { WishedId } from '../records/schemas/reaction-numbers.js';
import type { Noticeable } from './noticeable.js';

/** Numbers that are explained where there is no wish. */
const WITHOUT_A_WISH: readonly WishedId[] = ['hookStartFt', 'totalHookBoards'];

/** A cause makes most of a difference when it is more than this share of it, and at most this share remains without it. */
const MOST = 0.5;

/** For each wished number that differs noticeably from the usual middle layout's: the cause of most of the difference, if there is one. */
export const causesOfDifference = (
  causes: CausesAnswer,
  targets: readonly Pick<TargetAnswer, 'reading'>[],
  noticeable: Noticeable,
): Reason[] =>
  (targets.length > 0 ? targets.map(({ reading }) => reading) : WITHOUT_A_WISH)
    .filter((reading) => Math.abs(causes[reading].total) >= noticeable[reading])
    .flatMap((reading) => [...mainCause(reading, causes[reading]), ...byFinish(reading, causes)]);

function mainCause(reading: WishedId, { total, without, ...parts }: CausesOf): Reason[] {
  const makesMost = (cause: Cause): boolean => parts[cause] / total > MOST && without[cause] / total <= MOST;
  const [cause] = CAUSES.filter(makesMost).sort((a, b) => parts[b] / total - parts[a] / total);
  return cause
    ? [
        {
          code: 'cause-of-difference',
          params: { reading, total, cause, byCause: parts[cause], without: without[cause] },
        },
      ]
    : [];
}

/** If most of a difference disappears with the usual finish, the ball's own finish is its cause. */
function byFinish(reading: WishedId, { atUsualFinish, ...causes }: CausesAnswer): Reason[] {
  if (!atUsualFinish) return [];
  const { total } = causes[reading];
  const left = atUsualFinish[reading];
  const { usualGrit, grit } = atUsualFinish;
  return left / total <= MOST
    ? [{ code: 'difference-by-finish', params: { reading, total, left, usualGrit, grit } }]
    : [];
}
