import type { Units } from '../report/text/display-units.js';
import { answersOf, type Interview } from './interview.js';
import { isPut } from './settled.js';
import { taken } from './taken.js';

/**
 * What was answered before an interview was left, in a sentence: `So far: Ball speed 17.5 mph; Rev rate 300 rpm.`
 *
 * @param most  greatest number of characters; what has no room is counted
 */
export function recap(interview: Interview, units: Units, most = Number.POSITIVE_INFINITY): string {
  const { questions, replies } = interview;
  const answers = answersOf(interview);
  const said = questions.filter(
    (question) => replies[question.id]?.value && isPut(question, answers) && !question.givesUp,
  );
  const parts = said.map(
    (question) => `${question.name} ${taken(question, questions, answers, units).value}`,
  );
  if (parts.length === 0) return 'So far nothing but guesses.';
  const text = (count: number): string => {
    const more = parts.length - count;
    return `So far: ${parts.slice(0, count).join('; ')}${more > 0 ? `; and ${more} more` : ''}.`;
  };
  let count = parts.length;
  while (count > 1 && text(count).length > most) count -= 1;
  return text(count);
}
