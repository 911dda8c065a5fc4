import { readRecord } from '../../records/read/read-record.js';
import type { Shelf } from '../../records/read/shelf.js';
import { laneSchema } from '../../records/schemas/lane.js';
import { nameField, quantity } from '../../records/schemas/quantity.js';
import {
  NUMBER_OF_WISH,
  REACTION_NUMBERS,
  WISHES,
  type Wish,
  wishWords,
} from '../../records/schemas/reaction-numbers.js';
import { MOST_WISHED } from '../../records/schemas/read-wish.js';
import { wishUnit } from '../../records/schemas/wish-forms.js';
import { capital } from '../../records/text/capital.js';
import { ALL_NOTATIONS } from '../../records/text/written-layout.js';
import { UNITS, type Units } from '../../report/text/display-units.js';
import { AS_NUMBER } from './answers.js';
import { isNewBall } from './ball-kinds.js';
import { ballQuestions } from './ball-questions.js';
import { isDescribed } from './bowler-kinds.js';
import { ALL_NEEDS, type Needs } from './needs.js';
import { FROM_FILE, type Question, type QuestionEntry } from './question.js';
import { questionIn } from './question-in.js';
import { releaseQuestions } from './release-questions.js';
import { layoutField, usedBallQuestions } from './used-ball-questions.js';

/**
 * All questions of an interview in their order, as data.
 *
 * Ranges and messages are those of the records' own schemas. The usual answers are those of the kind of bowler
 * a person is, and of an everyday ball.
 */
export const questionsFor = (
  shelf: Shelf,
  units: Units = UNITS.trade,
  needs: Needs = ALL_NEEDS,
): readonly Question[] => entriesFor(shelf, needs).map((question) => questionIn(question, units));

const entriesFor = (shelf: Shelf, needs: Needs): readonly QuestionEntry[] => [
  ...(needs.layout ? [LAYOUT] : []),
  ...(needs.bowler ? [...releaseQuestions(shelf), KEEP_BOWLER] : []),
  ...(needs.ball ? [...ballQuestions(shelf), ...usedBallQuestions, KEEP_BALL] : []),
  ...(needs.lane ? laneQuestions(shelf) : []),
  ...(needs.want ? WISHES.flatMap(wishQuestions) : []),
];

const LAYOUT: QuestionEntry = {
  id: 'layout',
  kind: 'text',
  stage: 'first',
  name: 'Layout',
  term: 'layout',
  text: 'Which layout?',
  help: ALL_NOTATIONS,
  schema: layoutField,
  isNeeded: true,
};

const laneQuestions = (shelf: Shelf): readonly QuestionEntry[] => [
  {
    id: 'lane',
    kind: 'choice',
    stage: 'first',
    name: 'Lane',
    term: 'oil pattern',
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
    usual: () => 'house-easy',
  },
  {
    id: 'laneFile',
    kind: 'file',
    follows: 'lane',
    name: 'Lane’s file',
    text: 'Which file describes the lane?',
    help: 'A JSON file like those in data/lanes.',
    when: (answers) => answers.lane === FROM_FILE,
    read: (path) => readRecord(laneSchema, path),
  },
];

const KEEP_BOWLER: QuestionEntry = {
  id: 'keepBowler',
  kind: 'text',
  stage: 'more',
  name: 'Save bowler as',
  text: 'Save this bowler?',
  help: 'Type a name, or Enter to skip. A saved bowler can be chosen here next time, and by every command.',
  when: isDescribed,
  schema: nameField,
  none: 'not saved',
};

const KEEP_BALL: QuestionEntry = {
  id: 'keepBall',
  kind: 'text',
  stage: 'more',
  name: 'Save ball as',
  text: 'Save this ball?',
  help: 'Type a name, or Enter to skip. A saved ball can be chosen here next time, and by every command.',
  when: isNewBall,
  schema: nameField,
  none: 'not saved',
};

const wishQuestions = (wish: Wish): readonly QuestionEntry[] => {
  const { question, steps } = wishWords(wish);
  const { name, compared } = REACTION_NUMBERS[NUMBER_OF_WISH[wish]];
  const asked: QuestionEntry = {
    id: wish,
    kind: 'choice',
    stage: 'first',
    name: capital(name),
    term: name,
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
    follows: wish,
    name: capital(name),
    term: name,
    givesUp: wish,
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
