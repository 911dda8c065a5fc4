import type { Fault } from '../errors.js';
import { InputError } from '../errors.js';
import { type Ball, ballSchema, LEAST_MASS_BIAS_IN } from '../records/ball.js';
import { type Bowler, bowlerSchema } from '../records/bowler.js';
import type { Lane } from '../records/lane.js';
import { parseSigned } from '../records/parse-signed.js';
import { parseRecord } from '../records/read-record.js';
import type { Shelf } from '../records/shelf.js';
import { type Want, wantSchema } from '../records/want.js';
import type { Answers, Question } from './question.js';
import { BY_NUMBERS, FROM_FILE, LAST_BALL_NUMBER } from './questions.js';

/** How far an interview has come: which questions were answered, in order, and how. */
export interface Interview {
  readonly questions: readonly Question[];
  readonly answered: readonly string[];
  readonly answers: Answers;
}

export interface Interviewed {
  readonly bowler: Bowler;
  readonly ball: Ball;
  readonly lane: Lane;
  readonly want: Want;
}

export const startInterview = (questions: readonly Question[]): Interview => ({
  questions,
  answered: [],
  answers: {},
});

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
  const value = valueGiven(question, given, interview.answers);
  if (isFault(value)) return value;
  return {
    ...interview,
    answered: [...interview.answered, question.id],
    answers: { ...interview.answers, [question.id]: value.value },
  };
}

/** One question back; the answer to it is kept for its prompt, not counted. At the first question, the same. */
export const back = (interview: Interview): Interview => ({
  ...interview,
  answered: interview.answered.slice(0, -1),
});

/** Back to a question that was answered before, to answer it and all after it anew. */
export function backTo(interview: Interview, id: string): Interview {
  const at = interview.answered.indexOf(id);
  return at < 0 ? interview : { ...interview, answered: interview.answered.slice(0, at) };
}

/** The ball by its published numbers, once the last of them is the latest answer; else null. */
export const ballJustNumbered = ({ answered, answers }: Interview): Ball | null =>
  answered[answered.length - 1] === LAST_BALL_NUMBER ? numberedBall(answers) : null;

export const isFault = (result: object): result is Fault => 'rule' in result;

/**
 * The records a finished interview amounts to.
 *
 * @throws {InputError} when answers that are right one by one do not go together
 */
export function interviewed({ answers }: Interview, shelf: Shelf): Interviewed {
  const a = answers as Record<string, never>;
  return {
    bowler: parseRecord(
      bowlerSchema,
      {
        schema: 'flarewise/bowler/1',
        name: 'You',
        hand: a.hand,
        thumbHole: a.thumbHole,
        speedMph: a.speedMph,
        revRateRpm: a.revRateRpm,
        axisTiltDeg: a.axisTiltDeg,
        axisRotationDeg: a.axisRotationDeg,
        pap: { overIn: a.papOverIn, upIn: a.papUpIn },
      },
      'interview',
    ),
    ball: ballOf(answers, shelf),
    lane: (answers.lane === FROM_FILE ? answers.laneFile : found(shelf.lanes, answers.lane)) as Lane,
    want: parseRecord(
      wantSchema,
      withoutUndefined({ hookStart: a.hookStart, hookShape: a.hookShape, hookTotal: a.hookTotal }),
      'interview',
    ),
  };
}

function ballOf(answers: Answers, shelf: Shelf): Ball {
  if (answers.ball === FROM_FILE) return answers.ballFile as Ball;
  return answers.ball === BY_NUMBERS ? numberedBall(answers) : (found(shelf.balls, answers.ball) as Ball);
}

function numberedBall(answers: Answers): Ball {
  const { weightLb, rgIn, differentialIn, intermediateDifferentialIn, pinToCgIn, topWeightOz, surfaceGrit } =
    answers;
  return parseRecord(
    ballSchema,
    withoutUndefined({
      schema: 'flarewise/ball/1',
      name: 'Your ball',
      weightLb,
      rgIn,
      differentialIn,
      intermediateDifferentialIn,
      coreShape:
        (intermediateDifferentialIn as number) > LEAST_MASS_BIAS_IN ? 'asymmetric' : answers.coreShape,
      pinToCgIn,
      topWeightOz,
      surfaceGrit,
    }),
    'interview',
  );
}

const isPut = (question: Question, answers: Answers): boolean => question.when?.(answers) ?? true;

const found = <T>(list: readonly { readonly id: string; readonly record: T }[], id: unknown): T | undefined =>
  list.find((entry) => entry.id === id)?.record;

const withoutUndefined = (record: Record<string, unknown>): Record<string, unknown> =>
  Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined));

function valueGiven(question: Question, given: unknown, answers: Answers): { value: unknown } | Fault {
  const wrong = (rule: string, hint?: string): Fault => ({
    field: question.text,
    rule,
    got: JSON.stringify(given) ?? 'nothing',
    ...(hint ? { hint } : {}),
  });
  switch (question.kind) {
    case 'choice':
      return question.options.some((option) => option.value === given)
        ? { value: given }
        : wrong('must be one of the answers shown');
    case 'number': {
      const value = typeof given === 'number' ? given : parseSigned(String(given));
      const result = question.schema.safeParse(Number.isNaN(value) ? given : value);
      if (!result.success)
        return wrong(
          result.error.issues[0]?.message ?? 'cannot be used',
          (question.schema.meta() as { hint?: string } | undefined)?.hint,
        );
      const clash = question.check?.(value, answers);
      return clash ? wrong(clash) : { value };
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
