import type { Value } from './given-value.js';
import { type Answers, type QuestionId, UNKNOWN } from './questions/answers.js';
import type { Question } from './questions/question.js';

/** What was given to a question, and its value as it was read then: a file is read once. */
export interface Reply {
  readonly given: unknown;
  readonly value: Value;
}

export type Replies = { readonly [Id in QuestionId]?: Reply };

/**
 * All answers that replies amount to, each question that has a place with its reply's value or else its guess.
 *
 * They follow from the replies alone, in whatever order these were given.
 */
export function settled(questions: readonly Question[], replies: Replies): Answers {
  let answers: Answers = { deviations: {}, guessed: [] };
  for (const question of questions) {
    if (!isPut(question, answers)) continue;
    const said = replies[question.id]?.value ?? null;
    const value = said ?? guessOf(question, answers);
    const { deviations, guessed = [] } = answers;
    answers = {
      ...answers,
      [question.id]: value?.value,
      deviations:
        value?.deviation === undefined ? deviations : { ...deviations, [question.id]: value.deviation },
      guessed: said === null ? [...guessed, question.id] : guessed,
    } as Answers;
  }
  return answers;
}

/** Whether a question has a place, given the answers to those before it. */
export const isPut = (question: Question, answers: Answers): boolean => question.when?.(answers) ?? true;

/** What is taken of a question without a reply; null for nothing. */
function guessOf(question: Question, answers: Answers): Value {
  switch (question.kind) {
    case 'number':
      return question.guess?.(answers) ?? null;
    case 'choice':
      if (question.guessIsOpen !== undefined) return null;
      return { value: question.usual ? question.usual(answers) : question.options[0]?.value };
    default:
      return null;
  }
}

/** The reply of a person who does not know. */
export const UNKNOWN_REPLY: Reply = { given: UNKNOWN, value: null };
