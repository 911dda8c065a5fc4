import fc from 'fast-check';
import { expect, test } from 'vitest';
import { UNKNOWN } from '../../src/interview/answers.js';
import {
  answer,
  back,
  describedBall,
  type Interview,
  interviewed,
  isFault,
  nextQuestion,
  startInterview,
} from '../../src/interview/interview.js';
import { FROM_FILE, type Question } from '../../src/interview/question.js';
import { questionsFor } from '../../src/interview/questions.js';
import { UNITS } from '../../src/report/text/display-units.js';
import { shelf, usualAnswer } from '../support/interview/walk.js';

/** Far more than any interview takes, going back and forth. */
const MOST_STEPS = 400;

const NUMBERS =
  '? 0 1/4 1/2 1 2 2 1/4 3 5 6 8.6 9 11 13 1/2 20 45 60 75 300 5000 0.02 0.06 2.5 -3 0.004 0.0041'
    .replace(/(\d) (\d\/\d)/g, '$1_$2')
    .split(' ')
    .map((text) => text.replace('_', ' '));

/** Answers that a question may be given, right ones and wrong ones. */
function pool(question: Question, { answers }: Interview): readonly unknown[] {
  switch (question.kind) {
    case 'number':
      return [question.usual(answers), ...NUMBERS];
    case 'choice':
      return question.options.map(({ value }) => value).filter((value) => value !== FROM_FILE);
    case 'text':
      return ['', UNKNOWN, 'Kim', '70 x 4 1/2 x 30', '4 1/2 x 3 3/8 x 2 below', 'x'.repeat(81)];
    case 'file':
      throw new Error(`${question.id} is not asked here`);
  }
}

/** Answers at random until nothing is asked any more; null when it takes too long. */
function wander(units: keyof typeof UNITS, draws: readonly number[]): Interview | null {
  let interview = startInterview(questionsFor(shelf, UNITS[units]));
  for (let step = 0; step < MOST_STEPS; step++) {
    const question = nextQuestion(interview);
    if (!question) return interview;
    const draw = draws[step % draws.length] + step;
    const given = pool(question, interview);
    // every third answer is the usual one, so that most interviews come to their end
    const next = answer(
      interview,
      draw % 3 === 0 ? usualAnswer(question, interview.answers) : given[draw % given.length],
    );
    if (!isFault(next)) interview = next;
    else if (draw % 2 === 0) interview = back(interview);
  }
  return null;
}

test('whatever is answered, an interview that comes to its end makes sound records', () => {
  let ended = 0;
  fc.assert(
    fc.property(
      fc.constantFrom('trade' as const, 'metric' as const),
      fc.array(fc.nat(10_000), { minLength: 40, maxLength: 80 }),
      (units, draws) => {
        const interview = wander(units, draws);
        if (!interview) return;
        ended += 1;
        describedBall(interview, shelf);
        interviewed(interview, shelf); // throws for records that are not sound
      },
    ),
    { numRuns: 1500, seed: 7 },
  );
  expect(ended).toBeGreaterThan(300);
});
