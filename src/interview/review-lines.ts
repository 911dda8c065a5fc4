import type { Units } from '../report/text/display-units.js';
import { answersOf, type Interview } from './interview.js';
import { type Answers, isGuessed, type QuestionId } from './questions/answers.js';
import type { Question } from './questions/question.js';
import { isPut } from './settled.js';
import { taken } from './taken.js';

/** The pages of a review: all that decides the answer, and more about bowler and ball. */
export type ReviewPage = 'main' | 'bowler' | 'ball';

/** One line of a review: what was answered or guessed, or a way to another page. */
export interface ReviewLine {
  /** What choosing it shows: a question, or another page; `on` continues. */
  readonly to: { readonly ask: QuestionId } | { readonly page: ReviewPage } | 'on';
  readonly label: string;
  readonly value: string;
  /** `guess`, and how far off it may be; empty for what was plainly answered. */
  readonly status: string;
}

/** The lines of a page, top to bottom. */
export function reviewLines(interview: Interview, page: ReviewPage, units: Units): readonly ReviewLine[] {
  const answers = answersOf(interview);
  const linesOf = (ids: readonly QuestionId[]): readonly ReviewLine[] =>
    ids.flatMap((id) => {
      const question = interview.questions.find((each) => each.id === id);
      return question && isPut(question, answers) ? [lineOf(question, interview, answers, units)] : [];
    });
  if (page !== 'main')
    return [
      { to: { page: 'main' }, label: 'Back', value: 'to the other answers', status: '' },
      ...linesOf(PAGES[page]),
    ];
  return [
    { to: 'on', label: 'Go on', value: 'to the answer', status: '' },
    ...linesOf(MAIN_FIRST),
    ...moreOf('bowler', linesOf(PAGES.bowler), answers),
    ...linesOf(MAIN_BALL),
    ...moreOf('ball', linesOf(PAGES.ball), answers),
    ...linesOf(MAIN_LAST),
  ];
}

/** The page on which a question has its line, and that line's place; the first line of the main page where it has none. */
export function lineFor(
  interview: Interview,
  id: QuestionId,
  units: Units,
): { page: ReviewPage; line: number } {
  for (const page of ['main', 'bowler', 'ball'] as const) {
    const line = reviewLines(interview, page, units).findIndex(
      ({ to }) =>
        typeof to === 'object' && 'ask' in to && (to.ask === id || STANDS_FOR[to.ask]?.includes(id)),
    );
    if (line >= 0) return { page, line };
  }
  return { page: 'main', line: 0 };
}

function lineOf(question: Question, { questions }: Interview, answers: Answers, units: Units): ReviewLine {
  const shown = STANDS_FOR[question.id]?.find((id) =>
    questions.some((each) => each.id === id && isPut(each, answers)),
  );
  const told =
    shown && !question.id.endsWith('How') ? (questions.find(({ id }) => id === shown) ?? question) : question;
  return { to: { ask: question.id }, label: question.name, ...taken(told, questions, answers, units) };
}

const moreOf = (
  page: 'bowler' | 'ball',
  lines: readonly ReviewLine[],
  answers: Answers,
): readonly ReviewLine[] =>
  lines.length === 0
    ? []
    : [
        {
          to: { page },
          label: `More on ${page}`,
          value: lines.map(({ label }) => small(label)).join(', '),
          status: PAGES[page].some((id) => !id.startsWith('keep') && isGuessed(answers, id)) ? 'guess' : '',
        },
      ];

/** A name within a sentence; one that begins with an abbreviation stays. */
const small = (name: string): string => name.replace(/^[A-Z](?![A-Z])/, (letter) => letter.toLowerCase());

const MAIN_FIRST: readonly QuestionId[] = [
  'layout',
  'bowler',
  'hand',
  'speedHow',
  'revRateHow',
  'tiltHow',
  'rotationHow',
  'papHow',
];

const MAIN_BALL: readonly QuestionId[] = [
  'ball',
  'weightLb',
  'rgIn',
  'differentialIn',
  'intermediateDifferentialIn',
];

const MAIN_LAST: readonly QuestionId[] = ['lane', 'hookStart', 'sharpness', 'totalHook'];

const PAGES: Readonly<Record<'bowler' | 'ball', readonly QuestionId[]>> = {
  bowler: ['skill', 'keepBowler'],
  ball: [
    'coreShape',
    'lobes',
    'lobeToMark',
    'pinToCgIn',
    'topWeightOz',
    'surfaceGrit',
    'drilledBefore',
    'oldLayout',
    'oldHand',
    'oldThumbHole',
    'oldPap',
    'oldPapOverIn',
    'oldPapUpIn',
    'keepBall',
  ],
};

/** Other questions that a line represents: their answers and faults are shown there too. */
const STANDS_FOR: { readonly [Id in QuestionId]?: readonly QuestionId[] } = {
  bowler: ['bowlerFile'],
  ball: ['ballFile'],
  lane: ['laneFile'],
  hookStart: ['hookStartNumber'],
  sharpness: ['sharpnessNumber'],
  totalHook: ['totalHookNumber'],
  speedHow: ['speedMph', 'displayMph', 'watchS', 'timings'],
  revRateHow: ['revRateRpm', 'turns', 'frames', 'framesPerSecond'],
  tiltHow: ['axisTiltDeg', 'ringArcIn', 'ringDiameterIn'],
  rotationHow: ['axisRotationDeg', 'markAside', 'ballWidth'],
  papHow: ['papOverIn', 'papUpIn', 'ringAsideIn', 'ringBelowIn'],
};
