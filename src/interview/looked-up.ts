import { findTerm, loadGlossary } from '../records/shared/glossary.js';
import type { Units } from '../report/text/display-units.js';
import { wordedTerm } from '../report/wording/worded-term.js';
import { answersOf, type Interview, nextQuestion } from './interview.js';
import type { Question } from './questions/question.js';
import { taken } from './taken.js';

/** What `?` says: what is asked for means, as the glossary has it, and what is taken in its place once it went on. */
export function lookedUp(question: Question, after: Interview, units: Units): readonly string[] {
  const meaning = meaningOf(question, units);
  if (nextQuestion(after)?.id === question.id) return [meaning];
  const { value, status } = taken(question, after.questions, answersOf(after), units);
  return value === '' ? [meaning] : [meaning, `Taken for now: ${value}${status ? ` (${status})` : ''}.`];
}

/** The glossary's text on what a question asks for; its help where no term stands for it. */
export function meaningOf({ term, help }: Question, units: Units): string {
  if (term === undefined) return help;
  const found = findTerm(loadGlossary(), term);
  return 'term' in found ? `${found.term.term}: ${wordedTerm(found.term, units).text}` : help;
}
