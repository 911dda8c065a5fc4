import type { Fault } from '../base/errors.js';
import { faultOf, givenValue, isFault, needsAnswer } from './given-value.js';
import { formatTaken } from './number-given.js';
import { type Answers, type QuestionId, UNKNOWN } from './questions/answers.js';
import type { Question } from './questions/question.js';
import { isPut, type Replies, type Reply, settled, UNKNOWN_REPLY } from './settled.js';

/** How far an interview has come. What it amounts to follows from the replies alone. */
export interface Interview {
  readonly questions: readonly Question[];
  readonly replies: Replies;
  /** What was given to questions that were gone back over: it stands in their prompts, and does not count. */
  readonly offered: { readonly [Id in QuestionId]?: unknown };
  /** The question to put; null for the review. */
  readonly at: QuestionId | null;
  /** What is put next, before going on: the questions that follow one that was changed. */
  readonly queue: readonly QuestionId[];
  /** Where Escape goes back to; null at the beginning. */
  readonly before: Interview | null;
}

export const startInterview = (questions: readonly Question[]): Interview => {
  const empty: Interview = { questions, replies: {}, offered: {}, at: null, queue: [], before: null };
  return { ...empty, at: firstOpen(empty) };
};

/** The question to put; null for the review. */
export const nextQuestion = ({ questions, at }: Interview): Question | null =>
  questions.find(({ id }) => id === at) ?? null;

/** All answers so far, and guesses in place of the others. */
export const answersOf = ({ questions, replies }: Interview): Answers => settled(questions, replies);

/** Place of the question among all that are put before the review; null for one that is put from the review. */
export function progress(interview: Interview): { place: number; of: number } | null {
  const needed = neededIn(interview);
  const place = needed.findIndex(({ id }) => id === interview.at);
  return place < 0 || wasReviewed(interview) ? null : { place: place + 1, of: needed.length };
}

const wasReviewed = ({ at, before }: Interview): boolean =>
  at === null || (before !== null && wasReviewed(before));

/** The interview with its question answered, or what is wrong with the answer. */
export function answer(interview: Interview, given: unknown): Interview | Fault {
  const question = nextQuestion(interview);
  if (!question) return interview;
  const value = givenValue(question, given);
  if (isFault(value)) return value;
  const reply = value === null ? UNKNOWN_REPLY : { given, value };
  const { [question.voids ?? question.id]: _, ...kept } = interview.replies;
  const replies: Replies =
    question.givesUp && value === null
      ? { ...kept, [question.givesUp]: givenUp(interview.questions, question.givesUp) }
      : { ...kept, [question.id]: reply };
  const answers = settled(interview.questions, replies);
  const clash = value === null && question.givesUp ? null : question.check?.(answers);
  if (clash) return faultOf(question, given, clash);
  return goneOn(interview, replies, question.id);
}

/** The reply that stands for a guess: where one can be chosen, that choice; else as if it were not known. */
function givenUp(questions: readonly Question[], id: QuestionId): Reply {
  const question = questions.find((each) => each.id === id);
  const hasGuess =
    question?.kind === 'choice' && question.options.some(({ value }) => value === GUESS_CHOICE);
  return hasGuess ? { given: GUESS_CHOICE, value: { value: GUESS_CHOICE } } : UNKNOWN_REPLY;
}

const GUESS_CHOICE = 'guess';

/** The next question after one that was answered. */
function goneOn(interview: Interview, replies: Replies, id: QuestionId): Interview {
  const { questions, queue } = interview;
  const answers = settled(questions, replies);
  const following = questions.filter(
    (each) =>
      each.follows === id &&
      isPut(each, answers) &&
      (each.followsIf?.(answers) ?? each.follows === id) &&
      replies[id] !== UNKNOWN_REPLY,
  );
  const next = [...following.map((each) => each.id), ...queue].filter((each) =>
    questions.some((question) => question.id === each && isPut(question, answers)),
  );
  const [at, ...rest] = next;
  const after: Interview = { ...interview, replies, at: at ?? null, queue: rest, before: interview };
  return at === undefined ? { ...after, at: firstOpen(after) } : after;
}

/** One step back: to the question before, or to the review as it was. At the beginning, the same. */
export const back = (interview: Interview): Interview => {
  const { before, replies, offered } = interview;
  if (!before) return interview;
  const given = Object.fromEntries(Object.entries(replies).map(([id, reply]) => [id, reply.given]));
  return { ...before, offered: { ...offered, ...given } };
};

/** A question put from the review; what it was answered before counts until it is answered again. */
export const change = (interview: Interview, id: QuestionId): Interview => ({
  ...interview,
  at: id,
  queue: [],
  before: interview,
});

/** What stands in a question's prompt: what was given to it last. */
export const givenBefore = ({ replies, offered }: Interview, id: QuestionId): unknown =>
  replies[id]?.given ?? offered[id];

/** What is to be said of the answer just given to a question. */
export function toldOf(interview: Interview, id: QuestionId): readonly string[] {
  const question = interview.questions.find((each) => each.id === id);
  const given = interview.replies[id]?.given;
  if (!question || given === UNKNOWN) return [];
  const taken = question.kind === 'number' ? formatTaken(question, given) : null;
  return [taken, question.tell?.(answersOf(interview))].filter((text) => text != null);
}

/** Replies that no longer go with the others, each with what is wrong. */
export function clashes(interview: Interview): readonly { readonly id: QuestionId; readonly fault: Fault }[] {
  const answers = answersOf(interview);
  return interview.questions.flatMap((question) => {
    const reply = interview.replies[question.id];
    if (!reply || !isPut(question, answers)) return [];
    const clash = question.check?.(answers);
    return clash ? [{ id: question.id, fault: faultOf(question, reply.given, clash) }] : [];
  });
}

/** The questions that are put before the review, given the answers so far. */
function neededIn(interview: Interview): readonly Question[] {
  const answers = answersOf(interview);
  return interview.questions.filter(
    (question) =>
      isPut(question, answers) &&
      (question.stage === 'first' || question.stage === undefined || needsAnswer(question)),
  );
}

const firstOpen = (interview: Interview): QuestionId | null =>
  neededIn(interview).find(({ id }) => interview.replies[id] === undefined)?.id ?? null;
