import type { Fault } from '../base/errors.js';
import { InputError } from '../base/errors.js';
import { fromKeys } from '../base/from-keys.js';
import { shortened, visibleJson } from '../base/visible.js';
import { parseRecord } from '../records/read/read-record.js';
import type { Shelf } from '../records/read/shelf.js';
import { type Ball, publishedBallSchema } from '../records/schemas/ball.js';
import { type Bowler, bowlerSchema } from '../records/schemas/bowler.js';
import type { Lane } from '../records/schemas/lane.js';
import { WISHES, type Wish } from '../records/schemas/reaction-numbers.js';
import { formatWishedNumber } from '../records/schemas/read-wish.js';
import { type Want, wantSchema } from '../records/schemas/want.js';
import { isUnread, readNumber } from '../records/text/read-number.js';
import { type Answers, AS_NUMBER, answered as answerTo, type QuestionId, UNKNOWN } from './answers.js';
import { BALL_FILE, BY_NUMBERS, FIRST_BALL_NUMBER, LAST_BALL_NUMBER } from './ball-questions.js';
import { answeredFamily } from './core-family.js';
import { lobesOf } from './lobe-questions.js';
import { formatTaken, numberGiven } from './number-given.js';
import { type Clash, FROM_FILE, type Question } from './question.js';
import { releaseNumbers } from './release-numbers.js';
import { BY_QUESTIONS } from './release-questions.js';
import { earlierDrilling, endsUsedBall, FIRST_USED, guessedNote } from './used-ball-questions.js';

/** What was typed or chosen at each question, sound or not. */
type Given = { readonly [Id in QuestionId]?: unknown };

/** How far an interview has come: which questions were answered, in order, and how. */
export interface Interview {
  readonly questions: readonly Question[];
  readonly answered: readonly QuestionId[];
  readonly answers: Answers;
  /** What was typed or chosen, as it was given. */
  readonly given: Given;
}

export interface Interviewed {
  readonly bowler: Bowler;
  readonly ball: Ball;
  readonly lane: Lane;
  readonly want: Want;
  /** Names under which bowler and ball are to be kept, where the person gave one. */
  readonly keep: { readonly bowler?: string | undefined; readonly ball?: string | undefined };
}

export const startInterview = (questions: readonly Question[]): Interview => ({
  questions,
  answered: [],
  answers: {},
  given: {},
});

/** An interview that was left, as plain data: question and what was given to it, in order. */
export type InterviewDraft = readonly (readonly [id: string, given: unknown])[];

export const draftOf = ({ questions, answered, given }: Interview): InterviewDraft =>
  answered.map((id) => [
    id,
    withItsUnit(
      questions.find((question) => question.id === id),
      given[id],
    ),
  ]);

/** An interview taken up where it was left, as far as its answers are still ones that may be given. */
export function resumed(questions: readonly Question[], draft: InterviewDraft): Interview {
  let interview = startInterview(questions);
  for (const [id, given] of draft) {
    if (nextQuestion(interview)?.id !== id) break;
    const next = answer(interview, given ?? undefined); // JSON has no undefined
    if (isFault(next)) break;
    interview = next;
  }
  return interview;
}

/** The next question to put; null when all are answered. */
export const nextQuestion = ({ questions, answered, answers }: Interview): Question | null =>
  questions.find((question) => !answered.includes(question.id) && isPut(question, answers)) ?? null;

/** Place of the next question among all that will be put, as far as can be told now. */
export function progress(interview: Interview): { place: number; of: number } {
  const { questions, answered, answers } = interview;
  const open = questions.filter((question) => !answered.includes(question.id) && isPut(question, answers));
  return { place: answered.length + 1, of: answered.length + open.length };
}

/** The interview with its next question answered, or what is wrong with the answer. */
export function answer(interview: Interview, given: unknown): Interview | Fault {
  const question = nextQuestion(interview);
  if (!question) return interview;
  const value = valueGiven(question, given);
  if (isFault(value)) return value;
  const answers = {
    ...interview.answers,
    [question.id]: value.value,
    ...(question.kind === 'number'
      ? { deviations: { ...interview.answers.deviations, [question.id]: value.deviation } }
      : {}),
  };
  const clash = question.check?.(answers);
  if (clash) return refusal(question, given, clash);
  return {
    ...interview,
    answered: [...interview.answered, question.id],
    answers,
    given: { ...interview.given, [question.id]: given },
  };
}

/** One question back; the answer to it is kept for its prompt, not counted. At the first question, the same. */
export const back = (interview: Interview): Interview => ({
  ...interview,
  answered: interview.answered.slice(0, -1),
});

/** Back to a question that was answered before, to answer it and all after it anew. */
export function backTo(interview: Interview, id: QuestionId): Interview {
  const at = interview.answered.indexOf(id);
  return at < 0 ? interview : { ...interview, answered: interview.answered.slice(0, at) };
}

/** The question that comes once bowler and ball are described. */
const AFTER_BALL: QuestionId = 'lane';

/** Bowler and ball when the last question about them has just been answered, else null. They have no names of their own yet. */
export const justDescribed = (
  interview: Interview,
  shelf: Shelf,
): Pick<Interviewed, 'bowler' | 'ball'> | null =>
  nextQuestion(interview)?.id === AFTER_BALL
    ? { bowler: bowlerOf(interview.answers, shelf), ball: ballOf(interview.answers, shelf) }
    : null;

/** The first question about the ball, once the latest answer is the last one that describes it; else null. */
export function ballJustDescribed({ answered, answers }: Interview): QuestionId | null {
  const last = answered[answered.length - 1];
  if (endsUsedBall(last, answers)) return FIRST_USED;
  if (last === LAST_BALL_NUMBER) return FIRST_BALL_NUMBER;
  return last === BALL_FILE ? BALL_FILE : null;
}

/**
 * The ball as described so far: new, until its earlier drilling is told.
 *
 * @throws {InputError} when answers that are right one by one do not go together
 */
export const describedBall = ({ answered, answers }: Interview, shelf: Shelf): Ball =>
  ballOf(answered.includes(FIRST_USED) ? answers : { ...answers, [FIRST_USED]: false }, shelf);

/** What is to be told of the latest answer: how a number was taken, and what readings amount to; nothing of most. */
export function toldOf({ questions, answered, answers, given }: Interview): readonly string[] {
  const question = questions.find(({ id }) => id === answered[answered.length - 1]);
  if (!question) return [];
  const taken = question.kind === 'number' ? formatTaken(question, given[question.id]) : null;
  return [taken, question.tell?.(answers)].filter((text) => text != null);
}

export const isFault = (result: object): result is Fault => 'rule' in result;

/**
 * The records a finished interview amounts to.
 *
 * @throws {InputError} when answers that are right one by one do not go together
 */
export function interviewed({ answers }: Interview, shelf: Shelf): Interviewed {
  const { keepBowler, keepBall } = answers;
  return {
    bowler: bowlerOf(answers, shelf),
    ball: ballOf(answers, shelf),
    lane: answers.lane === FROM_FILE ? answerTo(answers, 'laneFile') : found(shelf.lanes, answers.lane),
    want: parseRecord(
      wantSchema,
      withoutUndefined(fromKeys(WISHES, (wish) => wished(wish, answers))),
      'interview',
    ),
    keep: { bowler: keepBowler, ball: keepBall },
  };
}

/** A wish by its step, or by the number that was asked for, with its unit. */
const wished = (wish: Wish, answers: Answers): number | string | undefined => {
  const step = answers[wish];
  return step === AS_NUMBER ? formatWishedNumber(wish, answerTo(answers, `${wish}Number`)) : step;
};

function bowlerOf(answers: Answers, shelf: Shelf): Bowler {
  if (answers.bowler === FROM_FILE) return answerTo(answers, 'bowlerFile');
  if (answers.bowler !== BY_QUESTIONS) return found(shelf.bowlers, answers.bowler);
  const { values, deviations } = releaseNumbers(answers);
  const { papOverIn, papUpIn, ...release } = values;
  return parseRecord(
    bowlerSchema,
    withoutUndefined({
      schema: 'flarewise/bowler/1',
      name: answers.keepBowler ?? 'You',
      hand: answers.hand,
      thumbHole: answers.thumbHole,
      ...release,
      pap: { overIn: papOverIn, upIn: papUpIn },
      skill: answers.skill,
      uncertainty: Object.keys(deviations).length > 0 ? deviations : undefined,
    }),
    'interview',
  );
}

function ballOf(answers: Answers, shelf: Shelf): Ball {
  if (answers.ball === FROM_FILE) return answerTo(answers, BALL_FILE);
  return answers.ball === BY_NUMBERS ? numberedBall(answers, shelf) : found(shelf.balls, answers.ball);
}

function numberedBall(answers: Answers, shelf: Shelf): Ball {
  const { weightLb, rgIn, differentialIn, intermediateDifferentialIn, pinToCgIn, topWeightOz, surfaceGrit } =
    answers;
  const earlier = earlierDrilling(answers, bowlerOf(answers, shelf));
  return parseRecord(
    publishedBallSchema,
    withoutUndefined({
      schema: 'flarewise/ball/1',
      name: answers.keepBall ?? 'Your ball',
      note: guessedNote(answers),
      weightLb,
      rgIn,
      differentialIn,
      intermediateDifferentialIn,
      coreShape: answeredFamily(answers),
      ...lobesOf(answers),
      pinToCgIn,
      topWeightOz,
      surfaceGrit,
      ...(earlier ? { drilledBefore: [earlier] } : {}),
    }),
    'interview',
  );
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

const isPut = (question: Question, answers: Answers): boolean => question.when?.(answers) ?? true;

/** @throws {Error} when it is not there: then a question offered a record that the shelf does not hold */
function found<T>(list: readonly { readonly id: string; readonly record: T }[], id: string | undefined): T {
  const entry = list.find((each) => each.id === id);
  if (!entry) throw new Error(`no record ${id}`);
  return entry.record;
}

const withoutUndefined = (record: Record<string, unknown>): Record<string, unknown> =>
  Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined));

const refusal = (question: Question, given: unknown, clash: Clash): Fault => ({
  field: question.text,
  got: given === undefined ? 'nothing' : shortened(visibleJson(given), 60),
  ...clash,
});

/** A sound answer; of a number, also how far off it may be where that was said. */
interface Value {
  readonly value: unknown;
  readonly deviation?: number | undefined;
}

function valueGiven(question: Question, given: unknown): Value | Fault {
  const wrong = (rule: string, hint?: string): Fault =>
    refusal(question, given, { rule, ...(hint ? { hint } : {}) });
  switch (question.kind) {
    case 'choice':
      return question.options.some((option) => option.value === given)
        ? { value: given }
        : wrong('must be one of the answers shown');
    case 'number': {
      if (question.mayBeUnknown && String(given).trim() === UNKNOWN) return { value: UNKNOWN };
      const { value, deviation, hint } = numberGiven(question, given);
      const result = question.schema.safeParse(value ?? given);
      if (!result.success)
        return wrong(
          result.error.issues[0]?.message ?? 'cannot be used',
          hint ?? question.typed?.hint ?? (question.schema.meta() as { hint?: string } | undefined)?.hint,
        );
      return { value, deviation };
    }
    case 'text': {
      const text = String(given ?? '').trim();
      if (text === '' || text === UNKNOWN) return { value: undefined };
      const result = question.schema.safeParse(text);
      return result.success ? { value: text } : wrong(result.error.issues[0]?.message ?? 'cannot be used');
    }
    case 'file':
      try {
        return { value: question.read(String(given).trim()) };
      } catch (error) {
        if (error instanceof InputError) return error.faults[0] as Fault;
        throw error;
      }
  }
}
