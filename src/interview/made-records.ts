import { fromKeys } from '../base/from-keys.js';
import { withoutUndefined } from '../base/without-undefined.js';
import { parseRecord } from '../records/read/read-record.js';
import type { Shelf } from '../records/read/shelf.js';
import { type Ball, publishedBallSchema } from '../records/schemas/ball.js';
import { type BallUncertainty, unsureNumbers } from '../records/schemas/ball-uncertainty.js';
import { type Bowler, bowlerSchema } from '../records/schemas/bowler.js';
import type { Lane } from '../records/schemas/lane.js';
import { WISHES, type Wish } from '../records/schemas/reaction-numbers.js';
import { formatWishedNumber } from '../records/schemas/read-wish.js';
import { type Want, wantSchema } from '../records/schemas/want.js';
import { answersOf, type Interview } from './interview.js';
import {
  type Answers,
  AS_NUMBER,
  answered as answerTo,
  isGuessed,
  type QuestionId,
} from './questions/answers.js';
import { isNewBall } from './questions/ball-kinds.js';
import { isDescribed } from './questions/bowler-kinds.js';
import { answeredFamily } from './questions/core-family.js';
import { lobesOf } from './questions/lobe-questions.js';
import { FROM_FILE } from './questions/question.js';
import { releaseNumbers } from './questions/release-numbers.js';
import { earlierDrilling, guessedOfUsed } from './questions/used-ball-questions.js';

/** What is known without asking: records that flags name. */
export interface Given {
  readonly bowler?: Bowler | undefined;
  readonly ball?: Ball | undefined;
  readonly lane?: Lane | undefined;
  readonly want?: Want | undefined;
}

/** The records and the wish that an interview amounts to. */
export interface Interviewed {
  readonly bowler: Bowler;
  readonly ball: Ball;
  /** Null where none was asked for. */
  readonly lane: Lane | null;
  readonly want: Want;
  /** As it was typed; empty where none was asked for. */
  readonly layout: string;
  /** Names under which bowler and ball are to be kept, where the person gave one. */
  readonly keep: { readonly bowler?: string | undefined; readonly ball?: string | undefined };
}

/** From where the records come that answers name, and those that flags name. */
interface Sources {
  readonly shelf: Shelf;
  readonly given?: Given | undefined;
}

/**
 * The records an interview amounts to, with guesses in place of what was not answered.
 *
 * @throws {InputError} when answers that are right one by one do not go together
 */
export function madeRecords(interview: Interview, { shelf, given = {} }: Sources): Interviewed {
  const answers = answersOf(interview);
  const { keepBowler, keepBall, layout = '' } = answers;
  const bowler = given.bowler ?? bowlerOf(answers, shelf);
  return {
    bowler,
    ball: given.ball ?? ballOf(answers, bowler, shelf),
    lane: given.lane ?? (answers.lane === undefined ? null : laneOf(answers, shelf)),
    want: given.want ?? wantOf(answers),
    layout,
    keep: { bowler: keepBowler, ball: keepBall },
  };
}

function bowlerOf(answers: Answers, shelf: Shelf): Bowler {
  if (answers.bowler === FROM_FILE) return answerTo(answers, 'bowlerFile');
  if (!isDescribed(answers)) return found(shelf.bowlers, answers.bowler);
  const { values, deviations } = releaseNumbers(answers);
  const { papOverIn, papUpIn, ...release } = values;
  const hand = answerTo(answers, 'hand');
  return parseRecord(
    bowlerSchema,
    withoutUndefined({
      schema: 'flarewise/bowler/1',
      name: answers.keepBowler ?? 'You',
      hand: hand.startsWith('left') ? 'left' : 'right',
      thumbHole: !hand.endsWith('no-thumb'),
      ...release,
      pap: { overIn: papOverIn, upIn: papUpIn },
      skill: known(answers, 'skill'),
      uncertainty: Object.keys(deviations).length > 0 ? deviations : undefined,
    }),
    'interview',
  );
}

const ballOf = (answers: Answers, bowler: Bowler, shelf: Shelf): Ball => {
  if (answers.ball === FROM_FILE) return answerTo(answers, 'ballFile');
  return isNewBall(answers) ? newBall(answers, bowler) : found(shelf.balls, answers.ball);
};

function newBall(answers: Answers, bowler: Bowler): Ball {
  const { weightLb, rgIn, differentialIn, intermediateDifferentialIn, pinToCgIn, topWeightOz } = answers;
  const earlier = earlierDrilling(answers, bowler);
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
      uncertainty: ballUncertaintyOf(answers),
      pinToCgIn,
      topWeightOz,
      surfaceGrit: known(answers, 'surfaceGrit'),
      ...(earlier ? { drilledBefore: [earlier] } : {}),
    }),
    'interview',
  );
}

/** How far off the numbers of the ball may be that were guessed or given roughly; undefined where all are known. */
function ballUncertaintyOf({ deviations = {} }: Answers): BallUncertainty | undefined {
  const keys = unsureNumbers(deviations);
  return keys.length > 0 ? fromKeys(keys, (key) => deviations[key]) : undefined;
}

const laneOf = (answers: Answers, shelf: Shelf): Lane =>
  answers.lane === FROM_FILE ? answerTo(answers, 'laneFile') : found(shelf.lanes, answers.lane);

const wantOf = (answers: Answers): Want =>
  parseRecord(wantSchema, withoutUndefined(fromKeys(WISHES, (wish) => wished(wish, answers))), 'interview');

/** A wish by its step, or by the number that was asked for, with its unit. */
const wished = (wish: Wish, answers: Answers): number | string | undefined => {
  const step = answers[wish];
  return step === AS_NUMBER ? formatWishedNumber(wish, answerTo(answers, `${wish}Number`)) : step;
};

/** An answer that a record leaves out when it is a guess: the computation then assumes the same, and says so. */
const known = <Id extends QuestionId>(answers: Answers, id: Id): Answers[Id] =>
  isGuessed(answers, id) ? undefined : answers[id];

/** What of a ball was not known, for the record's note. */
function guessedNote(answers: Answers): string | undefined {
  const guessed = [
    ...GUESSABLE.filter(([id]) => isGuessed(answers, id)).map(([, name]) => name),
    ...guessedOfUsed(answers),
  ];
  return guessed.length > 0 ? `Not known, and guessed: ${guessed.join(', ')}.` : undefined;
}

const GUESSABLE = [
  ['weightLb', 'weight'],
  ['rgIn', 'RG'],
  ['differentialIn', 'differential'],
  ['intermediateDifferentialIn', 'mass bias'],
  ['pinToCgIn', 'pin to CG'],
  ['topWeightOz', 'top weight'],
] as const;

/** @throws {Error} when it is not there: then a question offered a record that the shelf does not hold */
function found<T>(list: readonly { readonly id: string; readonly record: T }[], id: string | undefined): T {
  const entry = list.find((each) => each.id === id);
  if (!entry) throw new Error(`no record ${id}`);
  return entry.record;
}
