import { ballSchema, LEAST_MASS_BIAS_IN } from '../records/ball.js';
import { bowlerSchema } from '../records/bowler.js';
import { laneSchema } from '../records/lane.js';
import { readRecord } from '../records/read-record.js';
import type { Shelf } from '../records/shelf.js';
import type { Answers, ChoiceQuestion, Question } from './question.js';

/** Stands for "not one of the shelf's": published numbers, or a file. */
export const BY_NUMBERS = 'by-numbers';
export const FROM_FILE = 'from-file';

/** The question a person returns to when a ball's numbers do not go together. */
export const FIRST_BALL_NUMBER = 'weightLb';

/** The question after which a ball's numbers are complete. */
export const LAST_BALL_NUMBER = 'surfaceGrit';

const bowler = bowlerSchema.shape;
const pap = bowler.pap.shape;
const ball = ballSchema.shape;

/**
 * All questions of the interview in their order, as data.
 *
 * Ranges and messages are those of the record's own schemas. The usual answers are those of an average
 * right-hander and an everyday ball.
 */
export const questionsFor = (shelf: Shelf): readonly Question[] => [
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
    id: 'speedMph',
    kind: 'number',
    text: 'How fast does the ball leave your hand, in mph?',
    help: 'Ball speed at release, 8 to 26. A display that averages over the lane reads 1 to 1.5 mph less.',
    schema: bowler.speedMph,
    usual: '17.5',
  },
  {
    id: 'revRateRpm',
    kind: 'number',
    text: 'How fast does it turn, in turns per minute?',
    help: 'Rev rate at release, 30 to 700. 150 is few, 300 usual, 450 many.',
    schema: bowler.revRateRpm,
    usual: '310',
  },
  {
    id: 'axisTiltDeg',
    kind: 'number',
    text: 'How steep does the axis stand, in degrees?',
    help: 'Axis tilt, 0 to 75. 10 to 20 is usual; a spinner has 40 and more.',
    schema: bowler.axisTiltDeg,
    usual: '14',
  },
  {
    id: 'axisRotationDeg',
    kind: 'number',
    text: 'How much do you turn the ball sideways, in degrees?',
    help: 'Axis rotation, 0 to 110. 0 rolls straight down the lane, 45 is usual, 90 turns all sideways.',
    schema: bowler.axisRotationDeg,
    usual: '48',
  },
  {
    id: 'papOverIn',
    kind: 'number',
    text: 'PAP: how far over from the grip centre, in inches?',
    help: 'Positive axis point along the midline, by tape, 2 to 7 1/2. Fractions are fine: 4 7/8.',
    schema: pap.overIn,
    usual: '4 7/8',
  },
  {
    id: 'papUpIn',
    kind: 'number',
    text: 'PAP: how far up from the midline, in inches?',
    help: 'Up 3 to down 3, by tape. Write down as "1/4 down" or "-1/4".',
    schema: pap.upIn,
    usual: '3/8',
  },
  {
    id: 'ball',
    kind: 'choice',
    text: 'Which ball is to be drilled?',
    help: 'The balls named here are invented, for trying out.',
    options: [
      { value: BY_NUMBERS, label: 'By its published numbers' },
      { value: FROM_FILE, label: 'From a file' },
      ...shelf.balls.map(({ id, record }) => ({
        value: id,
        label: record.name,
        note: `${record.weightLb} lb, RG ${record.rgIn}, differential ${record.differentialIn}`,
      })),
    ],
  },
  {
    id: 'ballFile',
    kind: 'file',
    text: 'Which file describes the ball?',
    help: 'A JSON file like those in data/balls.',
    when: (answers) => answers.ball === FROM_FILE,
    read: (path) => readRecord(ballSchema, path),
  },
  ...ballNumbers(),
  {
    id: 'lane',
    kind: 'choice',
    text: 'Which lane do you bowl on?',
    help: 'The lanes named here are invented; take the one most like yours.',
    options: [
      ...shelf.lanes.map(({ id, record }) => ({
        value: id,
        label: record.name,
        note: `oil to ${record.patternFt} ft`,
      })),
      { value: FROM_FILE, label: 'From a file' },
    ],
    usual: 'house-easy',
  },
  {
    id: 'laneFile',
    kind: 'file',
    text: 'Which file describes the lane?',
    help: 'A JSON file like those in data/lanes.',
    when: (answers) => answers.lane === FROM_FILE,
    read: (path) => readRecord(laneSchema, path),
  },
  wish('hookStart', 'When should the hook start?', ['Earliest', 'Early', 'In between', 'Late', 'Latest']),
  wish('hookShape', 'How should the hook look?', ['Smoothest', 'Smooth', 'In between', 'Sharp', 'Sharpest']),
  wish('hookTotal', 'How much should it hook in all?', ['Least', 'Little', 'In between', 'Much', 'Most']),
];

function ballNumbers(): readonly Question[] {
  const when = (answers: Answers): boolean => answers.ball === BY_NUMBERS;
  return [
    {
      id: 'weightLb',
      kind: 'number',
      when,
      text: 'Weight before drilling, in pounds?',
      help: '8 to 16.',
      schema: ball.weightLb,
      usual: '15',
    },
    {
      id: 'rgIn',
      kind: 'number',
      when,
      text: 'RG, in inches?',
      help: 'Low radius of gyration, as published: 2.46 to 2.80, often near 2.50.',
      schema: ball.rgIn,
      usual: '2.53',
    },
    {
      id: 'differentialIn',
      kind: 'number',
      when,
      text: 'Total differential, in inches?',
      help: 'As published: 0 to 0.060. 0.020 flares little, 0.050 much.',
      schema: ball.differentialIn,
      usual: '0.040',
    },
    {
      id: 'intermediateDifferentialIn',
      kind: 'number',
      when,
      text: 'Intermediate differential (mass bias), in inches?',
      help: 'As published; 0 for a symmetric ball.',
      schema: ball.intermediateDifferentialIn,
      usual: '0',
      check: (value, answers) =>
        value > (answers.differentialIn as number)
          ? `must not exceed the total differential (${answers.differentialIn as number} in)`
          : null,
    },
    {
      id: 'coreShape',
      kind: 'choice',
      when: (answers) =>
        when(answers) && !((answers.intermediateDifferentialIn as number) > LEAST_MASS_BIAS_IN),
      text: 'Does the maker show a core with side features?',
      help: 'Noses, bumps or flats around its middle, not round like a turned piece of wood.',
      options: [
        { value: 'plain', label: 'No, it is round all around' },
        { value: 'lobed', label: 'Yes' },
        { value: undefined, label: 'I do not know', note: 'both are kept; the bands get wider' },
      ],
    },
    {
      id: 'pinToCgIn',
      kind: 'number',
      when,
      text: 'From the pin to the CG mark, in inches?',
      help: 'Arc along the surface, on the box or by tape: 0 to 6, often 2 to 4.',
      schema: ball.pinToCgIn,
      usual: '2 3/4',
    },
    {
      id: 'topWeightOz',
      kind: 'number',
      when,
      text: 'Top weight, in ounces?',
      help: 'On the box: 0 to 6, often 2 to 4.',
      schema: ball.topWeightOz,
      usual: '3',
    },
    {
      id: 'surfaceGrit',
      kind: 'number',
      when,
      text: 'Finish of the cover, in grit?',
      help: 'The last abrasive used: 500 rough, 2000 usual, 4000 smooth, 5500 for polish.',
      schema: ball.surfaceGrit.unwrap(),
      usual: '2000',
    },
  ];
}

const wish = (id: string, text: string, labels: readonly string[]): ChoiceQuestion => ({
  id,
  kind: 'choice',
  text,
  help: 'Measured against what layouts of this ball can do for you on this lane.',
  options: [
    { value: undefined, label: 'No wish' },
    ...labels.map((label, i) => ({ value: i + 1, label, note: `${i + 1} of 5` })),
  ],
});
