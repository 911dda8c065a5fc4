import type { Fault } from '../base/errors.js';
import type { QuestionId } from './questions/answers.js';
import type { Question } from './questions/question.js';

/** The question whose answer caused a fault in the records that an interview made; null where none did. */
export function faultPlace({ field }: Fault, questions: readonly Question[]): QuestionId | null {
  const has = (id: QuestionId): boolean => questions.some((question) => question.id === id);
  const last =
    field
      .split(/[.:[\]]/)
      .filter(Boolean)
      .at(-1)
      ?.trim() ?? '';
  const exact = questions.find(({ id }) => id === last)?.id;
  if (exact && !EARLIER.test(field)) return exact;
  const [, place] = PLACES.find(([part, id]) => part.test(field) && has(id)) ?? [];
  return place ?? null;
}

/** A fault of an earlier drilling: its layout and PAP are not those that are wanted now. */
const EARLIER = /drilledBefore/i;

/** What a fault's field may be called, by the line of the review that it belongs to; the first that fits. */
const PLACES: readonly (readonly [part: RegExp, id: QuestionId])[] = [
  [EARLIER, 'oldLayout'],
  [/grip|thumb/i, 'hand'],
  [/\bpap\b/i, 'papHow'],
  [/layout|drilling angle/i, 'layout'],
  [/core|cover|\bparts?\b|ball/i, 'ball'],
  [/lane/i, 'lane'],
  [/bowler/i, 'bowler'],
];
