import { readRecord } from '../../records/read/read-record.js';
import type { Shelf } from '../../records/read/shelf.js';
import { bowlerSchema } from '../../records/schemas/bowler.js';
import { GUESS_DEVIATION, type ReleaseKey } from '../../records/shared/release-guesses.js';
import { formatSixteenths } from '../../records/text/layout-text.js';
import type { Answers } from './answers.js';
import { BOWLER_KINDS, guessFor, isDescribed, kindOf } from './bowler-kinds.js';
import {
  PAP_MEASURED,
  REV_RATE_MEASURED,
  ROTATION_MEASURED,
  SPEED_MEASURED,
  TILT_MEASURED,
} from './measure-questions.js';
import { rangeClash } from './measured-numbers.js';
import { FROM_FILE, type Guess, type QuestionEntry } from './question.js';
import type { HOW_OF } from './release-numbers.js';

const bowler = bowlerSchema.shape;
const pap = bowler.pap.shape;

/** What all numbers share that may be measured in place of being typed. */
const typedFor = (how: (typeof HOW_OF)[keyof typeof HOW_OF]) => ({
  follows: how,
  followsIf: (answers: Answers): boolean => answers[how] === 'typed',
  voids: how,
});

const guessOf =
  (key: ReleaseKey) =>
  (answers: Answers): Guess => ({ value: guessFor(answers)[key], deviation: GUESS_DEVIATION[key] });

/** Who bowls, and how the ball leaves the hand. */
export const releaseQuestions = ({ bowlers }: Shelf): readonly QuestionEntry[] => [
  {
    id: 'bowler',
    kind: 'choice',
    stage: 'first',
    name: 'Bowler',
    text: 'Who bowls?',
    help: 'A kind of bowler sets the guesses for what you don’t know. A saved or demo bowler skips the release questions.',
    options: [
      ...BOWLER_KINDS.map(({ value, label, guess }) => ({
        value,
        label,
        note: `{${guess.speedMph} speed}, ${guess.revRateRpm} rpm`,
      })),
      ...bowlers.map(({ id, record }) => ({
        value: id,
        label: record.name,
        note: `{${record.speedMph} speed}, ${record.revRateRpm} rpm`,
      })),
      { value: FROM_FILE, label: 'From a file' },
    ],
  },
  {
    id: 'bowlerFile',
    kind: 'file',
    follows: 'bowler',
    name: 'Bowler’s file',
    text: 'Which file describes the bowler?',
    help: 'A JSON file like those in data/bowlers.',
    when: (answers) => answers.bowler === FROM_FILE,
    read: (path) => readRecord(bowlerSchema, path),
  },
  ...ofDescribed([
    {
      id: 'hand',
      kind: 'choice',
      stage: 'first',
      name: 'Hand',
      text: 'Which hand, and do you use a thumb hole?',
      help: 'Boards and PAP are counted from your own side. Many two-handed bowlers use no thumb hole.',
      usual: (answers) => (kindOf(answers).usesThumb ? 'right' : 'right-no-thumb'),
      options: [
        { value: 'right', label: 'Right, with a thumb hole' },
        { value: 'left', label: 'Left, with a thumb hole' },
        { value: 'right-no-thumb', label: 'Right, without a thumb hole' },
        { value: 'left-no-thumb', label: 'Left, without a thumb hole' },
      ],
    },
    {
      id: 'speedMph',
      kind: 'number',
      stage: 'first',
      ...typedFor('speedHow'),
      name: 'Ball speed',
      term: 'ball speed',
      guess: guessOf('speedMph'),
      check: (answers) => rangeClash('speedMph', answers),
      text: 'How fast does the ball leave your hand, in {unit}?',
      quantity: 'speed',
      help: 'Ball speed at release, {range}. Only know the overhead display? Press ?, and give that in the review.',
      schema: bowler.speedMph,
      usual: (answers) => String(guessFor(answers).speedMph),
    },
    ...SPEED_MEASURED,
    {
      id: 'revRateRpm',
      kind: 'number',
      stage: 'first',
      ...typedFor('revRateHow'),
      name: 'Rev rate',
      term: 'rev rate',
      guess: guessOf('revRateRpm'),
      check: (answers) => rangeClash('revRateRpm', answers),
      text: 'What is your rev rate, in rpm?',
      help: 'Rev rate at release, {range}. 150 is few, 300 usual, 450 many.',
      schema: bowler.revRateRpm,
      usual: (answers) => String(guessFor(answers).revRateRpm),
    },
    ...REV_RATE_MEASURED,
    {
      id: 'axisTiltDeg',
      kind: 'number',
      stage: 'first',
      ...typedFor('tiltHow'),
      name: 'Axis tilt',
      term: 'axis tilt',
      guess: guessOf('axisTiltDeg'),
      check: (answers) => rangeClash('axisTiltDeg', answers),
      text: 'How much axis tilt do you have, in degrees?',
      help: 'Axis tilt, {range}. 10 to 20 is usual; a spinner has 40 and more.',
      schema: bowler.axisTiltDeg,
      usual: (answers) => String(guessFor(answers).axisTiltDeg),
    },
    ...TILT_MEASURED,
    {
      id: 'axisRotationDeg',
      kind: 'number',
      stage: 'first',
      ...typedFor('rotationHow'),
      name: 'Axis rotation',
      term: 'axis rotation',
      guess: guessOf('axisRotationDeg'),
      check: (answers) => rangeClash('axisRotationDeg', answers),
      text: 'How much axis rotation (side turn), in degrees?',
      help: 'Axis rotation, {range}. 0 rolls straight down the lane, 45 is usual, 90 turns all sideways.',
      schema: bowler.axisRotationDeg,
      usual: (answers) => String(guessFor(answers).axisRotationDeg),
    },
    ...ROTATION_MEASURED,
    {
      id: 'papOverIn',
      kind: 'number',
      stage: 'more',
      ...typedFor('papHow'),
      name: 'PAP over',
      term: 'PAP',
      guess: guessOf('papOverIn'),
      check: (answers) => rangeClash('papOverIn', answers),
      text: 'PAP: how far over from the grip centre, in {unit}?',
      quantity: 'tape',
      help: 'Positive axis point along the midline, by tape, {range}, such as {4 7/8 tape}.',
      schema: pap.overIn,
      usual: (answers) => formatSixteenths(guessFor(answers).papOverIn),
    },
    ...PAP_MEASURED,
    {
      id: 'papUpIn',
      kind: 'number',
      stage: 'more',
      ...typedFor('papHow'),
      name: 'PAP up',
      term: 'PAP',
      guess: guessOf('papUpIn'),
      check: (answers) => rangeClash('papUpIn', answers),
      text: 'PAP: how far up from the midline, in {unit}?',
      quantity: 'tape',
      help: 'Up {3 tape} to down {3 tape}, by tape. Down is written "{1/4 tape} down" or with a minus.',
      schema: pap.upIn,
      usual: (answers) => formatSixteenths(guessFor(answers).papUpIn),
    },
    {
      id: 'skill',
      kind: 'choice',
      stage: 'more',
      name: 'Repeatability',
      text: 'How repeatable are your shots?',
      help: 'Sets how much speed, turns and direction scatter from one shot to the next.',
      usual: () => 'league',
      options: [
        {
          value: 'beginner',
          label: 'They differ a lot',
          note: 'speed by {0.8 speed}, direction by 0.6 degrees',
        },
        {
          value: 'league',
          label: 'As in most leagues',
          note: 'speed by {0.4 speed}, direction by 0.35 degrees',
        },
        {
          value: 'advanced',
          label: 'Very repeatable',
          note: 'speed by {0.2 speed}, direction by 0.2 degrees',
        },
      ],
    },
  ]),
];

/** Questions about a bowler who is described by answers. */
function ofDescribed(questions: readonly QuestionEntry[]): readonly QuestionEntry[] {
  return questions.map((question) => ({
    ...question,
    when: (answers) => isDescribed(answers) && (question.when?.(answers) ?? true),
  }));
}
