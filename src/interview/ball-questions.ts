import { readBall } from '../records/read/read-ball.js';
import type { Shelf } from '../records/read/shelf.js';
import { type Ball, hasOwnCore, publishedBallSchema } from '../records/schemas/ball.js';
import { CORE_FAMILIES, CORE_FAMILY_IDS } from '../records/schemas/core-families.js';
import { type Answers, answered } from './answers.js';
import { openFamilies } from './core-family.js';
import { lobeQuestions } from './lobe-questions.js';
import { BACK_KEY, FROM_FILE, type QuestionEntry } from './question.js';

/** Stands for a ball given by its published numbers. */
export const BY_NUMBERS = 'by-numbers';

/** The question for the file of a ball. */
export const BALL_FILE = 'ballFile';

/** The question a person returns to when a ball's numbers do not go together. */
export const FIRST_BALL_NUMBER = 'weightLb';

/** The question after which a ball's numbers are complete. */
export const LAST_BALL_NUMBER = 'surfaceGrit';

const ball = publishedBallSchema.shape;

/** Which ball is to be drilled. */
export const ballQuestions = (shelf: Shelf): readonly QuestionEntry[] => [
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
        note: ballNote(record),
      })),
    ],
  },
  {
    id: BALL_FILE,
    kind: 'file',
    text: 'Which file describes the ball?',
    help: 'A JSON file like those in data/balls.',
    when: (answers) => answers.ball === FROM_FILE,
    read: readBall,
  },
  ...ballNumbers(),
];

const ballNote = (ball: Ball): string =>
  hasOwnCore(ball)
    ? `{${ball.weightLb} weight}, core of its own`
    : `{${ball.weightLb} weight}, RG {${ball.rgIn} gyration}, differential {${ball.differentialIn} gyration}`;

function ballNumbers(): readonly QuestionEntry[] {
  const when = (answers: Answers): boolean => answers.ball === BY_NUMBERS;
  return [
    {
      id: 'weightLb',
      kind: 'number',
      when,
      text: 'Weight before drilling, in {unit}?',
      quantity: 'weight',
      help: '{range}; another unit may follow the number.',
      schema: ball.weightLb,
      usual: () => '15',
    },
    {
      id: 'rgIn',
      kind: 'number',
      when,
      text: 'RG, in {unit}?',
      quantity: 'gyration',
      help: 'Low radius of gyration, as published: {range}, often near {2.50 gyration}.',
      schema: ball.rgIn,
      usual: () => '2.53',
    },
    {
      id: 'differentialIn',
      kind: 'number',
      when,
      text: 'Total differential, in {unit}?',
      quantity: 'gyration',
      help: 'As published: {range}. {0.020 gyration} flares little, {0.050 gyration} much.',
      schema: ball.differentialIn,
      usual: () => '0.040',
    },
    {
      id: 'intermediateDifferentialIn',
      kind: 'number',
      when,
      text: 'Intermediate differential (mass bias), in {unit}?',
      quantity: 'gyration',
      help: 'As published, {range}; 0 for a symmetric ball.',
      schema: ball.intermediateDifferentialIn,
      usual: () => '0',
      check: (answers) => {
        const total = answered(answers, 'differentialIn');
        return answered(answers, 'intermediateDifferentialIn') > total
          ? {
              rule: `must not exceed the total differential ({${total} gyration})`,
              hint: `If that one is wrong, type ${BACK_KEY} to go back.`,
            }
          : null;
      },
    },
    {
      id: 'coreShape',
      kind: 'choice',
      when: (answers) => when(answers) && openFamilies(answers).length > 1,
      text: 'Does the core have bumps or flats on its sides?',
      help: 'Noses, bumps or flats around its middle, not round like something turned on a lathe.',
      options: [
        ...CORE_FAMILY_IDS.flatMap((id) => {
          const { answer } = CORE_FAMILIES[id];
          return answer === null ? [] : [{ value: id, label: answer }];
        }),
        { value: undefined, label: 'I do not know', note: 'both are kept; the bands get wider' },
      ],
    },
    {
      id: 'pinToCgIn',
      kind: 'number',
      when,
      text: 'From the pin to the CG mark, in {unit}?',
      quantity: 'tape',
      help: 'Arc along the surface, on the box or by tape: {range}, often {2 to 4 tape}.',
      schema: ball.pinToCgIn,
      usual: () => '2 3/4',
    },
    ...lobeQuestions(when),
    {
      id: 'topWeightOz',
      kind: 'number',
      when,
      text: 'Top weight, in {unit}?',
      quantity: 'ounce',
      help: 'On the box: {range}, often {2 to 4 ounce}.',
      schema: ball.topWeightOz,
      usual: () => '3',
    },
    {
      id: 'surfaceGrit',
      kind: 'number',
      when,
      text: 'Finish of the cover, in grit?',
      help: 'The last abrasive used, {range}: 500 rough, 2000 usual, 4000 smooth, 5500 for polish.',
      schema: ball.surfaceGrit.unwrap(),
      usual: () => '2000',
    },
  ];
}
