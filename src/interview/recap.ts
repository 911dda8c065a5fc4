import type { Units } from '../report/text/display-units.js';
import { answersOf, type Interview } from './interview.js';
import { isPut } from './settled.js';
import { taken } from './taken.js';

/** What was answered before an interview was left, in a sentence or two: `Ball speed 17.5 mph; Rev rate 300 rpm.` */
export function recap(interview: Interview, units: Units): string {
  const { questions, replies } = interview;
  const answers = answersOf(interview);
  const said = questions.filter(
    (question) => replies[question.id]?.value && isPut(question, answers) && !question.givesUp,
  );
  const parts = said.map((question) => {
    const { value } = taken(question, questions, answers, units);
    return `${question.name} ${value}`;
  });
  return parts.length === 0 ? 'So far nothing but guesses.' : `So far: ${parts.join('; ')}.`;
}
