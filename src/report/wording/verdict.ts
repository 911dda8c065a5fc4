import type { LayoutDifference } from '../../records/answers/answer.js';
import { CLEARLY, PROBABLY, SLIGHTLY } from '../../records/schemas/sureness.js';

type Visibility = LayoutDifference['weighed']['visibility'];

/** How one layout compares with another, in words: what a person could not see is never clearly better, however sure it is. */
export function verdict(share: number, visibility: Visibility): string {
  if (share <= 1 - SLIGHTLY) return 'behind in most worlds';
  if (share < SLIGHTLY) return 'no real difference';
  if (visibility === 'unseen') return 'ahead, but you would not see the difference';
  if (share >= CLEARLY) return visibility === 'seen' ? 'clearly better' : 'better, by little';
  return share >= PROBABLY ? 'probably better' : 'slightly better';
}
