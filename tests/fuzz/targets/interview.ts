import fc from 'fast-check';
import { InputError } from '../../../src/base/errors.js';
import { draftOf, type InterviewDraft, resumed } from '../../../src/interview/draft.js';
import { isFault } from '../../../src/interview/given-value.js';
import {
  answer,
  answersOf,
  back,
  change,
  clashes,
  nextQuestion,
  startInterview,
} from '../../../src/interview/interview.js';
import { UNKNOWN } from '../../../src/interview/questions/answers.js';
import { FROM_FILE, type Question } from '../../../src/interview/questions/question.js';
import { questionsFor } from '../../../src/interview/questions/questions.js';
import { reviewLines } from '../../../src/interview/review-lines.js';
import { isPut } from '../../../src/interview/settled.js';
import { UNITS } from '../../../src/report/text/display-units.js';
import { recordsOf, shelf, usualAnswer } from '../../support/interview/walk.js';
import { anyText } from '../spoiled-text.js';
import { target } from '../target.js';

/* The interview: whole ones, with steps back and changes, and drafts of ones that were left. */

const typed = anyText([
  '?',
  '17',
  '300 rpm',
  '4 7/8',
  '27,5 km/h',
  '45',
  'Kim',
  '70 x 4 1/2 x 30',
  '2.54',
  '0.045',
  '1/4 down',
]);
const step = fc.record({ what: fc.nat(9), pick: fc.nat(1000), text: typed });
type Step = typeof step extends fc.Arbitrary<infer T> ? T : never;

const QUESTIONS = { trade: questionsFor(shelf), metric: questionsFor(shelf, UNITS.metric) };

/** Walks by steps, then answers as usual what is still asked, until the review or for so many questions. */
function walked(units: keyof typeof QUESTIONS, steps: readonly Step[]): unknown {
  let interview = startInterview(QUESTIONS[units]);
  for (const { what, pick, text } of steps) {
    const question = nextQuestion(interview);
    if (what === 0) interview = back(interview);
    else if (question) {
      const next = answer(interview, given(question, pick, text, what > 5 ? answersOf(interview) : null));
      if (!isFault(next)) interview = next;
      else if (!next.field || !next.rule || !next.got) throw new InputError('answer', next);
    } else {
      const placed = interview.questions.filter(
        (each) => each.kind !== 'file' && isPut(each, answersOf(interview)),
      );
      interview = change(interview, placed[pick % placed.length].id);
    }
  }
  for (let i = 0; i < MOST_QUESTIONS; i++) {
    const question = nextQuestion(interview);
    if (!question) break;
    const next = answer(interview, usualAnswer(question, answersOf(interview)));
    interview = isFault(next) ? back(interview) : next;
  }
  const again = resumed(
    interview.questions,
    JSON.parse(JSON.stringify(draftOf(interview))) as InterviewDraft,
  );
  for (const page of PAGES) reviewLines(again, page, UNITS[units]);
  if (nextQuestion(interview) || clashes(interview).length > 0) return { answers: answersOf(interview) };
  const { bowler, ball, lane } = recordsOf(interview);
  return { bowler, ball, lane };
}

const MOST_QUESTIONS = 100;
const PAGES = ['main', 'bowler', 'ball'] as const;

function given(
  question: Question,
  pick: number,
  text: string,
  answers: ReturnType<typeof answersOf> | null,
): unknown {
  if (question.kind === 'choice') {
    const values = question.options.map(({ value }) => value).filter((value) => value !== FROM_FILE);
    return [...values, UNKNOWN, text][pick % (values.length + 2)];
  }
  return answers && question.kind !== 'file' ? usualAnswer(question, answers) : text;
}

export const INTERVIEW = [
  target({
    name: 'interviews',
    what: 'whole ones: any answers, steps back, changes in the review, a draft taken up again',
    inputs: 12_000,
    chunk: 500,
    arbitrary: fc.record({
      units: fc.constantFrom('trade' as const, 'metric' as const),
      steps: fc.array(step, { minLength: 8, maxLength: 40 }),
    }),
    take: ({ units, steps }) => walked(units, steps),
  }),
  target({
    name: 'drafts of interviews',
    what: 'drafts that hold anything',
    inputs: 20_000,
    chunk: 1000,
    arbitrary: fc.array(
      fc.tuple(
        fc.oneof(
          fc.constantFrom(...QUESTIONS.trade.map(({ id }) => id as string)),
          fc.string({ maxLength: 12 }),
        ),
        fc.oneof(typed, fc.jsonValue({ maxDepth: 2 })),
      ),
      { maxLength: 20 },
    ),
    take: (draft) => answersOf(resumed(QUESTIONS.trade, draft)),
  }),
];
