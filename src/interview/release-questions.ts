import { readRecord } from '../records/read/read-record.js';
import type { Shelf } from '../records/read/shelf.js';
import { bowlerSchema } from '../records/schemas/bowler.js';
import { formatSixteenths } from '../records/text/layout-text.js';
import { type Answers, UNKNOWN } from './answers.js';
import { BOWLER_KINDS, guessFor } from './bowler-kinds.js';
import {
  PAP_MEASURED,
  REV_RATE_MEASURED,
  ROTATION_MEASURED,
  SPEED_MEASURED,
  TILT_MEASURED,
} from './measure-questions.js';
import { rangeClash } from './measured-numbers.js';
import { FROM_FILE, type QuestionEntry } from './question.js';

/** Stands for a bowler who is asked, not read. */
export const BY_QUESTIONS = 'by-questions';

const bowler = bowlerSchema.shape;
const pap = bowler.pap.shape;

/** Who bowls, and how the ball leaves the hand. */
export const releaseQuestions = ({ bowlers }: Shelf): readonly QuestionEntry[] => [
  {
    id: 'bowler',
    kind: 'choice',
    text: 'Whose ball is it?',
    help: 'Pick a saved or demo bowler to skip the release questions.',
    options: [
      { value: BY_QUESTIONS, label: 'Me, or someone I know' },
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
    text: 'Which file describes the bowler?',
    help: 'A JSON file like those in data/bowlers.',
    when: (answers) => answers.bowler === FROM_FILE,
    read: (path) => readRecord(bowlerSchema, path),
  },
  ...ofAsked([
    {
      id: 'hand',
      kind: 'choice',
      text: 'Which hand delivers the ball?',
      help: 'Boards and PAP are counted from your own side.',
      options: [
        { value: 'right', label: 'Right' },
        { value: 'left', label: 'Left' },
      ],
    },
    {
      id: 'kind',
      kind: 'choice',
      text: 'Which comes nearest to how you bowl?',
      help: 'Sets the suggested answers, and the guesses for what you don’t know.',
      options: BOWLER_KINDS.map(({ value, label, guess }) => ({
        value,
        label,
        note: `{${guess.speedMph} speed}, ${guess.revRateRpm} turns per minute`,
      })),
    },
    {
      id: 'thumbHole',
      kind: 'choice',
      text: 'Do you use a thumb hole?',
      help: 'Many two-handed bowlers have none.',
      options: [
        { value: true, label: 'Yes' },
        { value: false, label: 'No' },
      ],
    },
    {
      id: 'skill',
      kind: 'choice',
      text: 'How repeatable are your shots?',
      help: 'Sets how much speed, turns and direction scatter from one shot to the next.',
      usual: 'league',
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
    {
      id: 'speedMph',
      kind: 'number',
      check: (answers) => rangeClash('speedMph', answers),
      text: 'How fast does the ball leave your hand, in {unit}?',
      quantity: 'speed',
      help: 'Ball speed at release, {range}. Only know the overhead display? Type ?',
      schema: bowler.speedMph,
      usual: (answers) => String(guessFor(answers).speedMph),
      mayBeUnknown: true,
    },
    ...SPEED_MEASURED,
    {
      id: 'revRateRpm',
      kind: 'number',
      check: (answers) => rangeClash('revRateRpm', answers),
      text: 'What is your rev rate, in rpm?',
      help: 'Rev rate at release, {range}. 150 is few, 300 usual, 450 many.',
      schema: bowler.revRateRpm,
      usual: (answers) => String(guessFor(answers).revRateRpm),
      mayBeUnknown: true,
    },
    ...REV_RATE_MEASURED,
    {
      id: 'axisTiltDeg',
      kind: 'number',
      check: (answers) => rangeClash('axisTiltDeg', answers),
      text: 'How much axis tilt do you have, in degrees?',
      help: 'Axis tilt, {range}. 10 to 20 is usual; a spinner has 40 and more.',
      schema: bowler.axisTiltDeg,
      usual: (answers) => String(guessFor(answers).axisTiltDeg),
      mayBeUnknown: true,
    },
    ...TILT_MEASURED,
    {
      id: 'axisRotationDeg',
      kind: 'number',
      check: (answers) => rangeClash('axisRotationDeg', answers),
      text: 'How much axis rotation (side turn), in degrees?',
      help: 'Axis rotation, {range}. 0 rolls straight down the lane, 45 is usual, 90 turns all sideways.',
      schema: bowler.axisRotationDeg,
      usual: (answers) => String(guessFor(answers).axisRotationDeg),
      mayBeUnknown: true,
    },
    ...ROTATION_MEASURED,
    {
      id: 'papOverIn',
      kind: 'number',
      check: (answers) => rangeClash('papOverIn', answers),
      text: 'PAP: how far over from the grip centre, in {unit}?',
      quantity: 'tape',
      help: 'Positive axis point along the midline, by tape, {range}, such as {4 7/8 tape}.',
      schema: pap.overIn,
      usual: (answers) => formatSixteenths(guessFor(answers).papOverIn),
      mayBeUnknown: true,
    },
    ...PAP_MEASURED,
    {
      id: 'papUpIn',
      kind: 'number',
      check: (answers) => rangeClash('papUpIn', answers),
      text: 'PAP: how far up from the midline, in {unit}?',
      quantity: 'tape',
      help: 'Up {3 tape} to down {3 tape}, by tape. Down is written "{1/4 tape} down" or with a minus.',
      schema: pap.upIn,
      usual: (answers) => formatSixteenths(guessFor(answers).papUpIn),
      mayBeUnknown: true,
      when: (answers) => answers.papOverIn !== UNKNOWN,
    },
  ]),
];

/** Questions put only to a bowler who is asked. */
function ofAsked(questions: readonly QuestionEntry[]): readonly QuestionEntry[] {
  const isAsked = (answers: Answers): boolean => answers.bowler === BY_QUESTIONS;
  return questions.map((question) => ({
    ...question,
    when: (answers) => isAsked(answers) && (question.when?.(answers) ?? true),
  }));
}
