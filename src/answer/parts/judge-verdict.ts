import type { JudgeAnswer, LayoutDifference } from '../../records/answers/answer.js';
import { isClear, isProbable } from '../../records/schemas/sureness.js';

/** Whether it may be drilled comes first, then whether a difference could be seen, then how sure it is. */
export function judgeVerdict(
  isBarred: boolean,
  bestBeatsIt: number,
  { weighed, physics }: LayoutDifference,
): JudgeAnswer['verdict'] {
  if (isBarred) return 'not-allowed';
  if (!isProbable(bestBeatsIt)) return 'as-good';
  if (weighed.visibility === 'unseen' && physics.visibility === 'unseen') return 'no-difference-seen';
  return isClear(bestBeatsIt) && weighed.visibility === 'seen' ? 'clearly-worse' : 'probably-worse';
}
