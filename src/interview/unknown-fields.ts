import type { ReleaseKey } from '../records/shared/release-guesses.js';
import { answersOf, type Interview } from './interview.js';
import { isGuessed, type QuestionId } from './questions/answers.js';
import { HOW_OF, releaseNumber } from './questions/release-numbers.js';
import { isPut } from './settled.js';

/** A field of a record that an interview guessed, or knows only about: knowing it better would make the answer more certain. */
export interface UnknownField {
  /** Where it stands in the records: `bowler.axisTiltDeg`. */
  readonly field: string;
  /** The question to put, with `change`, for the person to give or measure it. */
  readonly ask: QuestionId;
}

/** All of them, in the order of the questions. What knowing each is worth is not decided here. */
export function unknownFields(interview: Interview): readonly UnknownField[] {
  const { questions } = interview;
  const answers = answersOf(interview);
  return questions.flatMap((question): readonly UnknownField[] => {
    const field = FIELDS[question.id];
    if (field === undefined || !isPut(question, answers)) return [];
    if (isRelease(question.id)) {
      const { deviation } = releaseNumber(question.id, answers);
      return deviation > 0 ? [{ field, ask: HOW_OF[question.id] }] : [];
    }
    return isGuessed(answers, question.id) ? [{ field, ask: question.id }] : [];
  });
}

const isRelease = (id: QuestionId): id is ReleaseKey => Object.hasOwn(HOW_OF, id);

/** The field that each question fills. */
const FIELDS: { readonly [Id in QuestionId]?: string } = {
  hand: 'bowler.hand',
  speedMph: 'bowler.speedMph',
  revRateRpm: 'bowler.revRateRpm',
  axisTiltDeg: 'bowler.axisTiltDeg',
  axisRotationDeg: 'bowler.axisRotationDeg',
  papOverIn: 'bowler.pap.overIn',
  papUpIn: 'bowler.pap.upIn',
  skill: 'bowler.skill',
  weightLb: 'ball.weightLb',
  rgIn: 'ball.rgIn',
  differentialIn: 'ball.differentialIn',
  intermediateDifferentialIn: 'ball.intermediateDifferentialIn',
  coreShape: 'ball.coreShape',
  lobes: 'ball.lobes',
  lobeToMark: 'ball.lobeFromMarkDeg',
  pinToCgIn: 'ball.pinToCgIn',
  topWeightOz: 'ball.topWeightOz',
  surfaceGrit: 'ball.surfaceGrit',
  drilledBefore: 'ball.drilledBefore',
  lane: 'lane',
};

/**
 * The same with those in front that would make the answer surer.
 *
 * @param surer  the most worthwhile first, by the last words of where they stand: `revRateRpm`, or `pap` for both its numbers
 */
export function surestFirst(
  fields: readonly UnknownField[],
  surer: readonly string[],
): readonly UnknownField[] {
  const place = ({ field }: UnknownField): number => {
    const found = surer.findIndex((each) => field.split('.').includes(each));
    return found < 0 ? surer.length : found;
  };
  return [...fields].sort((a, b) => place(a) - place(b));
}
