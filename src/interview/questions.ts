import { readRecord } from '../records/read/read-record.js';
import type { Shelf } from '../records/read/shelf.js';
import { laneSchema } from '../records/schemas/lane.js';
import { nameField, quantity } from '../records/schemas/quantity.js';
import {
  NUMBER_OF_WISH,
  REACTION_NUMBERS,
  WISHES,
  type Wish,
  wishWords,
} from '../records/schemas/reaction-numbers.js';
import { MOST_WISHED, wishUnit } from '../records/schemas/read-wish.js';
import { capital } from '../records/text/capital.js';
import { UNITS, type Units } from '../report/text/display-units.js';
import { type Answers, AS_NUMBER } from './answers.js';
import { BY_NUMBERS, ballQuestions } from './ball-questions.js';
import { FROM_FILE, type Question, type QuestionEntry } from './question.js';
import { questionIn } from './question-in.js';
import { BY_QUESTIONS, releaseQuestions } from './release-questions.js';
import { usedBallQuestions } from './used-ball-questions.js';

/**
 * All questions of the interview in their order, as data.
 *
 * Ranges and messages are those of the records' own schemas. The usual answers are those of the kind of bowler
 * a person is, and of an everyday ball.
 */
export const questionsFor = (shelf: Shelf, units: Units = UNITS.trade): readonly Question[] =>
  allQuestions(shelf).map((question) => questionIn(question, units));

const allQuestions = (shelf: Shelf): readonly QuestionEntry[] => [
  ...releaseQuestions(shelf),
  ...ballQuestions(shelf),
  ...usedBallQuestions,
  {
    id: 'lane',
    kind: 'choice',
    text: 'Which oil pattern is most like yours?',
    help: 'The lanes named here are invented; take the one most like yours.',
    options: [
      ...shelf.lanes.map(({ id, record }) => ({
        value: id,
        label: record.name,
        note: `oil to {${record.patternFt} lane}`,
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
  ...WISHES.flatMap(wishQuestions),
  keep(
    'keepBowler',
    'Under which name should this bowler be saved?',
    (answers) => answers.bowler === BY_QUESTIONS,
  ),
  keep(
    'keepBall',
    'And under which name should this ball be saved?',
    (answers) => answers.ball === BY_NUMBERS,
  ),
];

const keep = (
  id: 'keepBowler' | 'keepBall',
  text: string,
  when: (answers: Answers) => boolean,
): QuestionEntry => ({
  id,
  kind: 'text',
  text,
  help: 'Enter to skip. What is saved can be chosen here next time, and by every command.',
  when,
  schema: nameField,
});

const wishQuestions = (wish: Wish): readonly QuestionEntry[] => {
  const { question, steps } = wishWords(wish);
  const { name, compared } = REACTION_NUMBERS[NUMBER_OF_WISH[wish]];
  const asked: QuestionEntry = {
    id: wish,
    kind: 'choice',
    text: question,
    help: 'Measured against what layouts of this ball can do for you on this lane.',
    options: [
      { value: undefined, label: 'No preference' },
      ...steps.map((step, i) => ({
        value: i + 1,
        label: step === 'middle' ? 'In between' : capital(step),
        note: `${i + 1} of 5`,
      })),
      { value: AS_NUMBER, label: 'A number of my own' },
    ],
  };
  const number: QuestionEntry = {
    id: `${wish}Number`,
    kind: 'number',
    text: `Which ${name}, in {unit}?`,
    help: `${capital(wishWords(wish).about)}, {range}. Where this ball cannot, the nearest it can is the target.`,
    quantity: compared.quantity,
    schema: quantity(0, MOST_WISHED[wish], { unit: wishUnit(wish), what: capital(name) }),
    usual: () => USUAL_NUMBER[wish],
    when: (answers) => answers[wish] === AS_NUMBER,
  };
  return [asked, number];
};

/** Numbers that everyday shots have, in the unit of answers. */
const USUAL_NUMBER: Readonly<Record<Wish, string>> = { hookStart: '38', sharpness: '0.35', totalHook: '20' };
