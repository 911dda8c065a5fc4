import { isFault } from '../../../src/interview/given-value.js';
import {
  answer,
  answersOf,
  change,
  type Interview,
  nextQuestion,
  startInterview,
} from '../../../src/interview/interview.js';
import { madeRecords } from '../../../src/interview/made-records.js';
import type { Answers, QuestionId } from '../../../src/interview/questions/answers.js';
import type { Question } from '../../../src/interview/questions/question.js';
import { questionsFor } from '../../../src/interview/questions/questions.js';
import { isPut } from '../../../src/interview/settled.js';
import { demoShelf } from '../../../src/records/read/shelf.js';

export const shelf = demoShelf();
export const start = (): Interview => startInterview(questionsFor(shelf));

/** The records that an interview amounts to. */
export const recordsOf = (interview: Interview) => madeRecords(interview, { shelf });

/** What pressing enter at a question answers. */
export function usualAnswer(question: Question, answers: Answers): unknown {
  switch (question.kind) {
    case 'number':
      return question.usual(answers);
    case 'choice':
      return question.usual ? question.usual(answers) : question.options[0]?.value;
    case 'text':
      return '';
    case 'file':
      throw new Error(`${question.id} has no usual answer`);
  }
}

/** Answers the next question; fails when the answer is refused. */
export function give(interview: Interview, given: unknown): Interview {
  const next = answer(interview, given);
  if (isFault(next)) throw new Error(`${nextQuestion(interview)?.id}: ${next.rule}; got ${next.got}`);
  return next;
}

/**
 * Walks on until a question (or the review at the end), with answers by question and else the usual ones. Questions that are
 * not put before the review are put from there, where an answer is given for them, in their order.
 */
export function walkTo(
  until: string | null,
  answers: Readonly<Record<string, unknown>> = {},
  from = start(),
): { interview: Interview; asked: string[] } {
  let interview = from;
  const asked: string[] = [];
  const walk = (): boolean => {
    for (let question = nextQuestion(interview); question; question = nextQuestion(interview)) {
      if (question.id === until) return true;
      asked.push(question.id);
      interview = give(
        interview,
        question.id in answers ? answers[question.id] : usualAnswer(question, answersOf(interview)),
      );
    }
    return false;
  };
  if (walk()) return { interview, asked };
  for (const question of interview.questions) {
    const isWanted = question.id === until || (question.id in answers && !asked.includes(question.id));
    if (!isWanted || !isPut(question, answersOf(interview))) continue;
    interview = change(interview, question.id as QuestionId);
    if (walk()) return { interview, asked };
  }
  if (until !== null) throw new Error(`${until} is never asked`);
  return { interview, asked };
}
