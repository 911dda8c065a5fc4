import { readBall } from '../../records/read/read-ball.js';
import type { Shelf } from '../../records/read/shelf.js';
import { type Ball, hasOwnCore, publishedBallSchema } from '../../records/schemas/ball.js';
import { CORE_FAMILIES, CORE_FAMILY_IDS } from '../../records/schemas/core-families.js';
import { formatFraction } from '../../records/text/layout-text.js';
import { type Answers, answered } from './answers.js';
import { BALL_GUESS_DEVIATION, BALL_KINDS, type BallGuess, ballGuessFor, isNewBall } from './ball-kinds.js';
import { openFamilies } from './core-family.js';
import { lobeQuestions } from './lobe-questions.js';
import { BACK_KEY, FROM_FILE, type Guess, type QuestionEntry } from './question.js';

const ball = publishedBallSchema.shape;

/** Which ball is to be drilled. */
export const ballQuestions = (shelf: Shelf): readonly QuestionEntry[] => [
  {
    id: 'ball',
    kind: 'choice',
    stage: 'first',
    name: 'Ball',
    term: 'core',
    text: 'Which ball is to be drilled?',
    help: 'You can type a new ball’s published numbers in the review; until then they are guesses. Named balls are saved or demos.',
    options: [
      ...BALL_KINDS.map(({ value, label, note }) => ({ value, label, note })),
      ...shelf.balls.map(({ id, record }) => ({
        value: id,
        label: record.name,
        note: ballNote(record),
      })),
      { value: FROM_FILE, label: 'From a file' },
    ],
  },
  {
    id: 'ballFile',
    kind: 'file',
    follows: 'ball',
    name: 'Ball’s file',
    text: 'Which file describes the ball?',
    help: 'A JSON file like those in data/balls.',
    when: (answers) => answers.ball === FROM_FILE,
    read: readBall,
  },
  ...ballNumbers,
];

const ballNote = (ball: Ball): string =>
  hasOwnCore(ball)
    ? `{${ball.weightLb} weight}, core of its own`
    : `{${ball.weightLb} weight}, RG {${ball.rgIn} gyration}, differential {${ball.differentialIn} gyration}`;

/** A guess at a number; a mass bias of 0 goes with the kind of ball, and is off by nothing that is known. */
const ballGuess =
  (id: keyof BallGuess) =>
  (answers: Answers): Guess => {
    const value = ballGuessFor(answers)[id];
    return value === 0 ? { value } : { value, deviation: BALL_GUESS_DEVIATION[id] };
  };

const when = isNewBall;

const ballNumbers: readonly QuestionEntry[] = [
  {
    id: 'weightLb',
    kind: 'number',
    stage: 'more',
    name: 'Weight',
    guess: ballGuess('weightLb'),
    when,
    text: 'Weight before drilling, in {unit}?',
    quantity: 'weight',
    help: '{range}; another unit may follow the number.',
    schema: ball.weightLb,
    usual: (answers) => String(ballGuessFor(answers).weightLb),
  },
  {
    id: 'rgIn',
    kind: 'number',
    stage: 'more',
    name: 'RG',
    term: 'RG',
    guess: ballGuess('rgIn'),
    when,
    text: 'RG, in {unit}?',
    quantity: 'gyration',
    help: 'Low radius of gyration, as published: {range}, often near {2.50 gyration}.',
    schema: ball.rgIn,
    usual: (answers) => ballGuessFor(answers).rgIn.toFixed(2),
  },
  {
    id: 'differentialIn',
    kind: 'number',
    stage: 'more',
    name: 'Differential',
    term: 'differential',
    guess: ballGuess('differentialIn'),
    when,
    text: 'Total differential, in {unit}?',
    quantity: 'gyration',
    help: 'As published: {range}. {0.020 gyration} flares little, {0.050 gyration} much.',
    schema: ball.differentialIn,
    usual: (answers) => ballGuessFor(answers).differentialIn.toFixed(3),
  },
  {
    id: 'intermediateDifferentialIn',
    kind: 'number',
    stage: 'more',
    name: 'Mass bias',
    term: 'intermediate differential',
    guess: ballGuess('intermediateDifferentialIn'),
    when,
    text: 'Intermediate differential (mass bias), in {unit}?',
    quantity: 'gyration',
    help: 'As published, {range}; 0 for a symmetric ball.',
    schema: ball.intermediateDifferentialIn,
    usual: (answers) => String(ballGuessFor(answers).intermediateDifferentialIn),
    check: (answers) => {
      const total = answered(answers, 'differentialIn');
      return answered(answers, 'intermediateDifferentialIn') > total
        ? {
            rule: `must not exceed the total differential ({${total} gyration})`,
            hint: `If that one is wrong, press ${BACK_KEY} to go back and change it first.`,
          }
        : null;
    },
  },
  {
    id: 'pinToCgIn',
    kind: 'number',
    stage: 'more',
    name: 'Pin to CG',
    term: 'CG',
    guess: ballGuess('pinToCgIn'),
    when,
    text: 'From the pin to the CG mark, in {unit}?',
    quantity: 'tape',
    help: 'Arc along the surface, on the box or by tape: {range}, often {2 to 4 tape}.',
    schema: ball.pinToCgIn,
    usual: (answers) => formatFraction(ballGuessFor(answers).pinToCgIn, 16),
  },
  {
    id: 'coreShape',
    kind: 'choice',
    stage: 'more',
    name: 'Bumps on the core',
    term: 'lobed core',
    when: (answers) => when(answers) && openFamilies(answers).length > 1,
    text: 'Does the core have bumps or flats on its sides?',
    help: 'Noses, bumps or flats around its middle, not round like something turned on a lathe.',
    options: [
      ...CORE_FAMILY_IDS.flatMap((id) => {
        const { answer } = CORE_FAMILIES[id];
        return answer === null ? [] : [{ value: id, label: answer }];
      }),
    ],
    guessIsOpen: 'not known, both are kept',
  },
  ...lobeQuestions(when),
  {
    id: 'topWeightOz',
    kind: 'number',
    stage: 'more',
    name: 'Top weight',
    term: 'top weight',
    guess: ballGuess('topWeightOz'),
    when,
    text: 'Top weight, in {unit}?',
    quantity: 'ounce',
    help: 'On the box: {range}, often {2 to 4 ounce}.',
    schema: ball.topWeightOz,
    usual: (answers) => String(ballGuessFor(answers).topWeightOz),
  },
  {
    id: 'surfaceGrit',
    kind: 'number',
    stage: 'more',
    name: 'Finish',
    term: 'grit',
    when,
    text: 'Finish of the cover, in grit?',
    help: 'The last abrasive used, {range}: 500 rough, 2000 usual, 4000 smooth, 5500 for polish.',
    schema: ball.surfaceGrit.unwrap(),
    usual: () => '2000',
  },
];
