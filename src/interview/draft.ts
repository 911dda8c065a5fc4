import { isUnread, readNumber } from '../records/text/read-number.js';
import { givenValue, isFault } from './given-value.js';
import { answer, answersOf, type Interview, startInterview } from './interview.js';
import type { Question } from './questions/question.js';
import { isPut, type Replies, UNKNOWN_REPLY } from './settled.js';

/** An interview that was left, as plain data: question and what was given to it, in order. */
export type InterviewDraft = readonly (readonly [id: string, given: unknown])[];

/** With what was given to questions that were gone back over: who leaves there loses nothing. */
export function draftOf({ questions, replies, offered }: Interview): InterviewDraft {
  const isOffered = ({ id, stage }: Question): boolean =>
    stage === 'first' && replies[id] === undefined && Object.hasOwn(offered, id);
  const given = [
    ...Object.entries(replies).map(([id, reply]) => [id, reply.given] as const),
    ...questions.filter(isOffered).map(({ id }) => [id, offered[id]] as const),
  ];
  return given.map(([id, each]) => [
    id,
    withItsUnit(
      questions.find((question) => question.id === id),
      each,
    ),
  ]);
}

/**
 * An interview taken up where it was left, with all of its answers that may still be given. Those to questions that have no
 * place now, of another command, are dropped, and what no one can have typed or chosen.
 */
export function resumed(questions: readonly Question[], draft: InterviewDraft): Interview {
  const given = new Map(
    draft
      .filter(([, value]) => typeof value !== 'object' || value === null)
      .map(([id, value]) => [id, value ?? undefined]), // JSON has no undefined
  );
  let interview = startInterview(questions);
  while (interview.at !== null && given.has(interview.at)) {
    const { at } = interview;
    const next = answer(interview, given.get(at));
    if (isFault(next)) break;
    interview = next;
    given.delete(at);
  }
  const others = questions.flatMap((question) => {
    if (!given.has(question.id) || question.id === interview.at) return [];
    const value = givenValue(question, given.get(question.id));
    if (isFault(value)) return [];
    return [
      [question.id, value === null ? UNKNOWN_REPLY : { given: given.get(question.id), value }] as const,
    ];
  });
  const replies: Replies = { ...interview.replies, ...Object.fromEntries(others) };
  return { ...interview, replies };
}

/** How many questions of an interview were answered. */
export function answerCount(interview: Interview): number {
  const answers = answersOf(interview);
  return interview.questions.filter(
    (question) => interview.replies[question.id] !== undefined && isPut(question, answers),
  ).length;
}

/** A number as it was typed, with the unit it was typed in: the next time questions may be put in others. */
function withItsUnit(question: Question | undefined, given: unknown): unknown {
  if (typeof given !== 'string' || question?.kind !== 'number' || !question.quantity || !question.typed)
    return given;
  const { kind } = question.typed;
  const withUnit = given.trimEnd().replace(/( ?(?:up|down))?$/i, ` ${kind.bare}$1`);
  const [bare, same] = [readNumber(given, kind), readNumber(withUnit, kind)];
  const isSame = !isUnread(bare) && !isUnread(same) && bare.value === same.value;
  return isSame ? withUnit : given; // one that has a unit cannot be read with another behind it
}
