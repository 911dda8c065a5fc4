import type { Ball } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import type { CoreFamily } from '../records/schemas/core-families.js';
import type { Lane } from '../records/schemas/lane.js';
import type { Wish } from '../records/schemas/reaction-numbers.js';
import type { UncertainKey } from '../records/shared/about-deviation.js';
import type { BowlerKind } from '../records/shared/release-guesses.js';

/** The answer to a number that a person does not know; other questions then find it out. */
export const UNKNOWN = '?';

/** The answer to a wish that another question asks as a number. */
export const AS_NUMBER = 'number';

/** A number of the release, which further questions can measure. */
type Measurable = number | typeof UNKNOWN;

/** What each question is answered with, by its id; numbers in the records' own units. */
export interface AnswerTypes
  extends Readonly<Record<Wish, number | typeof AS_NUMBER>>,
    Readonly<Record<`${Wish}Number`, number>> {
  /** Id of a record on the shelf, or one of the words that stand for another way. */
  readonly bowler: string;
  readonly bowlerFile: Bowler;
  readonly hand: Bowler['hand'];
  readonly kind: BowlerKind;
  readonly thumbHole: boolean;
  readonly skill: NonNullable<Bowler['skill']>;

  readonly speedMph: Measurable;
  readonly speedHow: 'display' | 'watch' | 'guess';
  readonly displayMph: number;
  readonly watchS: number;
  readonly timings: number;
  readonly revRateRpm: Measurable;
  readonly revRateHow: 'video' | 'guess';
  readonly turns: number;
  readonly frames: number;
  readonly framesPerSecond: number;
  readonly axisTiltDeg: Measurable;
  readonly tiltHow: 'arc' | 'diameter' | 'guess';
  readonly ringArcIn: number;
  readonly ringDiameterIn: number;
  readonly axisRotationDeg: Measurable;
  readonly rotationHow: 'picture' | 'guess';
  readonly markAside: number;
  readonly ballWidth: number;
  readonly papOverIn: Measurable;
  readonly papHow: 'ring' | 'guess';
  readonly ringAsideIn: number;
  readonly ringBelowIn: Measurable;
  readonly papUpIn: Measurable;

  readonly ball: string;
  readonly ballFile: Ball;
  readonly weightLb: number;
  readonly rgIn: number;
  readonly differentialIn: number;
  readonly intermediateDifferentialIn: number;
  readonly coreShape: CoreFamily;
  readonly pinToCgIn: number;
  readonly lobes: number;
  readonly lobeToMark: boolean;
  readonly topWeightOz: number;
  readonly surfaceGrit: number;

  readonly drilledBefore: boolean;
  readonly oldLayout: string;
  readonly oldHand: Bowler['hand'];
  readonly oldThumbHole: boolean;
  readonly oldPap: 'same' | 'other';
  readonly oldPapOverIn: number;
  readonly oldPapUpIn: number;

  readonly lane: string;
  readonly laneFile: Lane;
  readonly keepBowler: string;
  readonly keepBall: string;
}

export type QuestionId = keyof AnswerTypes;

/** The questions whose answers are of a type. */
export type IdOf<T> = { [Id in QuestionId]: AnswerTypes[Id] extends T ? Id : never }[QuestionId];

/** What a person has answered so far, by question; undefined stands for a choice of "I do not know". */
export type Answers = { readonly [Id in QuestionId]?: AnswerTypes[Id] | undefined } & {
  /** How far off numbers may be that were answered by a range or by about so much (one standard deviation, record units). */
  readonly deviations?: { readonly [K in UncertainKey]?: number };
};

/**
 * An answer that must be there, since others imply it.
 *
 * @throws {Error} when it is not: then a question was put, or skipped, wrongly
 */
export function answered<Id extends QuestionId>(answers: Answers, id: Id): AnswerTypes[Id] {
  const answer: AnswerTypes[Id] | undefined = (answers as { readonly [I in QuestionId]?: AnswerTypes[I] })[
    id
  ];
  if (answer === undefined) throw new Error(`no answer to ${id}`);
  return answer;
}

/** A number that was answered; NaN while it is not known. */
export function numberAnswered(answers: Answers, id: IdOf<Measurable>): number {
  const answer = answers[id];
  return typeof answer === 'number' ? answer : Number.NaN;
}
