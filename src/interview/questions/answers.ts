import type { Ball } from '../../records/schemas/ball.js';
import type { Bowler } from '../../records/schemas/bowler.js';
import type { CoreFamily } from '../../records/schemas/core-families.js';
import type { Lane } from '../../records/schemas/lane.js';
import type { Wish } from '../../records/schemas/reaction-numbers.js';
import type { UncertainKey } from '../../records/shared/about-deviation.js';

/** The answer of a person who does not know, one key at every question: a guess is taken. */
export const UNKNOWN = '?';

/** The answer to a wish that another question asks as a number. */
export const AS_NUMBER = 'number';

/** What each question is answered with, by its id; numbers in the records' own units. */
export interface AnswerTypes
  extends Readonly<Record<Wish, number | typeof AS_NUMBER>>,
    Readonly<Record<`${Wish}Number`, number>> {
  readonly layout: string;

  /** Id of a record on the shelf, a kind of bowler, or the word that stands for a file. */
  readonly bowler: string;
  readonly bowlerFile: Bowler;
  readonly hand: 'right' | 'left' | 'right-no-thumb' | 'left-no-thumb';
  readonly skill: NonNullable<Bowler['skill']>;

  readonly speedMph: number;
  readonly speedHow: How<'display' | 'watch'>;
  readonly displayMph: number;
  readonly watchS: number;
  readonly timings: number;
  readonly revRateRpm: number;
  readonly revRateHow: How<'video'>;
  readonly turns: number;
  readonly frames: number;
  readonly framesPerSecond: number;
  readonly axisTiltDeg: number;
  readonly tiltHow: How<'arc' | 'diameter'>;
  readonly ringArcIn: number;
  readonly ringDiameterIn: number;
  readonly axisRotationDeg: number;
  readonly rotationHow: How<'picture'>;
  readonly markAside: number;
  readonly ballWidth: number;
  readonly papOverIn: number;
  readonly papUpIn: number;
  readonly papHow: How<'ring'>;
  readonly ringAsideIn: number;
  readonly ringBelowIn: number;

  /** Id of a record on the shelf, a kind of new ball, or the word that stands for a file. */
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

/** How a number of the release is found: typed, measured in some way, or guessed by the kind of bowler. */
type How<Way extends string> = 'typed' | Way | 'guess';

export type QuestionId = keyof AnswerTypes;

/** The questions whose answers are of a type. */
export type IdOf<T> = { [Id in QuestionId]: AnswerTypes[Id] extends T ? Id : never }[QuestionId];

/** What a person answered, and what is taken where they did not, by question; undefined where nothing is taken. */
export type Answers = { readonly [Id in QuestionId]?: AnswerTypes[Id] | undefined } & {
  /** How far off numbers may be that were guessed, or typed as a range or as about so much (one standard deviation, record units). */
  readonly deviations?: { readonly [Id in UncertainKey | 'weightLb']?: number };
  /** The questions whose answers are guesses, by `?` or because they were not put. */
  readonly guessed?: readonly QuestionId[];
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

/** A number that was answered; NaN while it is not. */
export const numberAnswered = (answers: Answers, id: IdOf<number>): number => answers[id] ?? Number.NaN;

export const isGuessed = ({ guessed = [] }: Answers, id: QuestionId): boolean => guessed.includes(id);
