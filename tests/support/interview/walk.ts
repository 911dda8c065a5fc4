import type { Answers } from '../../../src/interview/answers.js';
import {
  answer,
  type Interview,
  isFault,
  nextQuestion,
  startInterview,
} from '../../../src/interview/interview.js';
import type { Question } from '../../../src/interview/question.js';
import { questionsFor } from '../../../src/interview/questions.js';
import { demoShelf } from '../../../src/records/read/shelf.js';

export const shelf = demoShelf();
export const start = (): Interview => startInterview(questionsFor(shelf));

/** What pressing enter at a question answers. */
export function usualAnswer(question: Question, answers: Answers): unknown {
  switch (question.kind) {
    case 'number':
      return question.usual(answers);
    case 'choice':
      return question.usual ?? question.options[0]?.value;
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

/** Walks on until a question (or the end), with answers by question and else the usual ones. */
export function walkTo(
  until: string | null,
  answers: Readonly<Record<string, unknown>> = {},
  from = start(),
): { interview: Interview; asked: string[] } {
  let interview = from;
  const asked: string[] = [];
  for (let question = nextQuestion(interview); question; question = nextQuestion(interview)) {
    if (question.id === until) return { interview, asked };
    asked.push(question.id);
    interview = give(
      interview,
      question.id in answers ? answers[question.id] : usualAnswer(question, interview.answers),
    );
  }
  if (until !== null) throw new Error(`${until} is never asked`);
  return { interview, asked };
}
