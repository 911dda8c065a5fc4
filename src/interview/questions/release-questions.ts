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
import { type Clash, FROM_FILE, type Guess, type QuestionEntry } from './question.js';
import { HOW_OF } from './release-numbers.js';

const bowler = bowlerSchema.shape;
const pap = bowler.pap.shape;

/** What all numbers share that are typed, unless they are measured or guessed. */
const typed = (id: ReleaseKey) => ({
  id,
  kind: 'number' as const,
  follows: HOW_OF[id],
  followsIf: (answers: Answers): boolean => answers[HOW_OF[id]] === 'typed',
  voids: HOW_OF[id],
  guess: (answers: Answers): Guess => ({ value: guessFor(answers)[id], deviation: GUESS_DEVIATION[id] }),
  check: (answers: Answers): Clash | null => rangeClash(id, answers),
});

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
      ...typed('speedMph'),
      stage: 'first',
      name: 'Ball speed',
      term: 'ball speed',
      text: 'How fast does the ball leave your hand, in {unit}?',
      quantity: 'speed',
      help: 'Ball speed at release, {range}. Only know the overhead display? Press ?, and give that in the review.',
      schema: bowler.speedMph,
      usual: (answers) => String(guessFor(answers).speedMph),
    },
    ...SPEED_MEASURED,
    {
      ...typed('revRateRpm'),
      stage: 'first',
      name: 'Rev rate',
      term: 'rev rate',
      text: 'What is your rev rate, in rpm?',
      help: 'Rev rate at release, {range}. 150 is few, 300 usual, 450 many.',
      schema: bowler.revRateRpm,
      usual: (answers) => String(guessFor(answers).revRateRpm),
    },
    ...REV_RATE_MEASURED,
    {
      ...typed('axisTiltDeg'),
      stage: 'first',
      name: 'Axis tilt',
      term: 'axis tilt',
      text: 'How much axis tilt do you have, in degrees?',
      help: 'Axis tilt, {range}. 10 to 20 is usual; a spinner has 40 and more.',
      schema: bowler.axisTiltDeg,
      usual: (answers) => String(guessFor(answers).axisTiltDeg),
    },
    ...TILT_MEASURED,
    {
      ...typed('axisRotationDeg'),
      stage: 'first',
      name: 'Axis rotation',
      term: 'axis rotation',
      text: 'How much axis rotation (side turn), in degrees?',
      help: 'Axis rotation, {range}. 0 rolls straight down the lane, 45 is usual, 90 turns all sideways.',
      schema: bowler.axisRotationDeg,
      usual: (answers) => String(guessFor(answers).axisRotationDeg),
    },
    ...ROTATION_MEASURED,
    {
      ...typed('papOverIn'),
      stage: 'more',
      name: 'PAP over',
      term: 'PAP',
      text: 'PAP: how far over from the grip centre, in {unit}?',
      quantity: 'tape',
      help: 'Positive axis point along the midline, by tape, {range}, such as {4 7/8 tape}.',
      schema: pap.overIn,
      usual: (answers) => formatSixteenths(guessFor(answers).papOverIn),
    },
    ...PAP_MEASURED,
    {
      ...typed('papUpIn'),
      stage: 'more',
      name: 'PAP up',
      term: 'PAP',
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
