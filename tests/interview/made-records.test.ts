import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isFault } from '../../src/interview/given-value.js';
import {
  answer,
  answersOf,
  back,
  change,
  clashes,
  type Interview,
  nextQuestion,
  startInterview,
} from '../../src/interview/interview.js';
import { type QuestionId, UNKNOWN } from '../../src/interview/questions/answers.js';
import { FROM_FILE, type Question } from '../../src/interview/questions/question.js';
import { questionsFor } from '../../src/interview/questions/questions.js';
import { isPut } from '../../src/interview/settled.js';
import { UNITS } from '../../src/report/text/display-units.js';
import { give, recordsOf, shelf, usualAnswer } from '../support/interview/walk.js';

/** Far more than any interview takes, going back and forth. */
const MOST_STEPS = 400;

const NUMBERS =
  '? 0 1/4 1/2 1 2 2 1/4 3 5 6 8.6 9 11 13 1/2 20 45 60 75 300 5000 0.02 0.06 2.5 -3 0.004 0.0041'
    .replace(/(\d) (\d\/\d)/g, '$1_$2')
    .split(' ')
    .map((text) => text.replace('_', ' '));

/** Answers that a question may be given, right ones and wrong ones. */
function pool(question: Question, interview: Interview): readonly unknown[] {
  switch (question.kind) {
    case 'number':
      return [question.usual(answersOf(interview)), ...NUMBERS];
    case 'choice':
      return [...question.options.map(({ value }) => value).filter((value) => value !== FROM_FILE), UNKNOWN];
    case 'text':
      return ['', UNKNOWN, 'Kim', '70 x 4 1/2 x 30', '4 1/2 x 3 3/8 x 2 below', 'x'.repeat(81)];
    case 'file':
      throw new Error(`${question.id} is not asked here`);
  }
}

/** Questions that have a place now, to be put from the review. */
const placedIn = (interview: Interview): readonly Question[] => {
  const answers = answersOf(interview);
  return interview.questions.filter(
    (question) => question.kind !== 'file' && isPut(question, answers) && question.givesUp === undefined,
  );
};

/**
 * Answers, goes back and changes at random until the draws end, then answers what is still asked.
 *
 * @returns the interview at its review; null where replies that do not go together were left there
 */
function wander(units: keyof typeof UNITS, draws: readonly number[]): Interview | null {
  let interview = startInterview(questionsFor(shelf, UNITS[units]));
  for (let step = 0; step < MOST_STEPS; step++) {
    const question = nextQuestion(interview);
    const draw = (draws[step % draws.length] as number) + step;
    const isOver = step >= 2 * draws.length;
    if (!question) {
      if (isOver) return clashes(interview).length === 0 ? interview : null;
      const placed = placedIn(interview);
      interview =
        draw % 5 === 0 ? back(interview) : change(interview, placed[draw % placed.length]?.id as QuestionId);
      continue;
    }
    const given = pool(question, interview);
    // every third answer is the usual one, so that most interviews come to their end
    const next = answer(
      interview,
      draw % 3 === 0 || isOver ? usualAnswer(question, answersOf(interview)) : given[draw % given.length],
    );
    if (!isFault(next)) interview = draw % 7 === 0 && !isOver ? back(next) : next;
    else if (draw % 2 === 0) interview = back(interview);
  }
  return null;
}

/** The same replies, each question answered once and in the order of the questions. */
function straight({ questions, replies }: Interview): Interview {
  let interview = startInterview(questions);
  const given = (question: Question): unknown => replies[question.id]?.given ?? UNKNOWN;
  for (let question = nextQuestion(interview); question; question = nextQuestion(interview))
    interview = give(interview, given(question));
  for (const question of questions)
    if (
      replies[question.id] &&
      interview.replies[question.id] === undefined &&
      isPut(question, answersOf(interview))
    ) {
      interview = change(interview, question.id);
      for (let next = nextQuestion(interview); next; next = nextQuestion(interview))
        interview = give(interview, given(next));
    }
  return interview;
}

const draws = fc.array(fc.nat(10_000), { minLength: 20, maxLength: 60 });
const systems = fc.constantFrom('trade' as const, 'metric' as const);

test('whatever is answered, gone back over and changed, the review amounts to sound records', () => {
  let ended = 0;
  fc.assert(
    fc.property(systems, draws, (units, drawn) => {
      const interview = wander(units, drawn);
      if (!interview) return;
      ended += 1;
      recordsOf(interview); // throws for records that are not sound
    }),
    { numRuns: 400, seed: 7 },
  );
  expect(ended).toBeGreaterThan(150);
});

test('any order of answers, changes and steps back ends in the same records as answering straight', () => {
  let ended = 0;
  fc.assert(
    fc.property(systems, draws, (units, drawn) => {
      const interview = wander(units, drawn);
      if (!interview) return;
      ended += 1;
      expect(recordsOf(straight(interview))).toEqual(recordsOf(interview));
    }),
    { numRuns: 200, seed: 8 },
  );
  expect(ended).toBeGreaterThan(70);
});
