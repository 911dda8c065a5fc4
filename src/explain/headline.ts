import type { LayoutDifference } from '../records/answers/answer.js';
import type { Headline } from '../records/answers/statements/headlines.js';
import { isClear } from '../records/schemas/sureness.js';

/** The facts that the headline is chosen from. */
type HeadlineFacts = Omit<Extract<Headline, { code: 'usual-as-good' }>['params'], 'difference'> & {
  /** From the usual middle layout; null if it is that layout. */
  readonly difference: LayoutDifference | null;
  /** What is ahead of the usual where that is the first, but finds the gutter more often; null of all else. */
  readonly rival: Omit<Extract<Headline, { code: 'usual-arrives-more' }>['params'], 'usual'> | null;
  readonly hasWish: boolean;
};

/** How the first layout compares with the usual one. The size of the difference decides before its certainty does. */
export function headline(
  { difference, rival, hasWish, ...facts }: HeadlineFacts,
  practiceWeight: number,
): Headline {
  const { usual, ties, of } = facts;
  if (!difference && rival) return { code: 'usual-arrives-more', params: { usual, ...rival } };
  if (!difference && !hasWish) return { code: 'nothing-asked', params: { usual } };
  if (!difference) return { code: 'is-the-usual', params: { usual, ties, of } };
  const params = { ...facts, difference };
  const { weighed, physics, practice } = difference;
  const isUnseen = practiceWeight === 0 || practice.visibility === 'unseen';
  if (physics.visibility === 'unseen' && isUnseen) return { code: 'usual-as-good', params };
  if (physics.visibility === 'unseen') return { code: 'practice-sees-more', params };
  if (weighed.visibility === 'unseen') return { code: 'pull-apart', params };
  if (weighed.visibility === 'barely') return { code: 'barely-seen', params };
  return { code: isClear(facts.ahead) ? 'seen-and-sure' : 'seen-not-sure', params };
}
