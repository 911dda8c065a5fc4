import { describe, expect, test } from 'vitest';
import { isFault, needsAnswer } from '../../src/interview/given-value.js';
import {
  answer,
  answersOf,
  back,
  change,
  nextQuestion,
  startInterview,
} from '../../src/interview/interview.js';
import { lookedUp, meaningOf } from '../../src/interview/looked-up.js';
import { AS_NUMBER, UNKNOWN } from '../../src/interview/questions/answers.js';
import { ALL_NEEDS } from '../../src/interview/questions/needs.js';
import { FROM_FILE } from '../../src/interview/questions/question.js';
import { questionsFor } from '../../src/interview/questions/questions.js';
import { isPut } from '../../src/interview/settled.js';
import { findTerm, loadGlossary } from '../../src/records/shared/glossary.js';
import { UNITS } from '../../src/report/text/display-units.js';
import { recordsOf, shelf, walkTo } from '../support/interview/walk.js';

const questions = questionsFor(shelf, UNITS.trade, { ...ALL_NEEDS, layout: true });

/** Answers after which each question has a place. */
const WAYS: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  bowlerFile: { bowler: FROM_FILE },
  ballFile: { ball: FROM_FILE },
  laneFile: { lane: FROM_FILE },
  hookStartNumber: { hookStart: AS_NUMBER },
  sharpnessNumber: { sharpness: AS_NUMBER },
  totalHookNumber: { totalHook: AS_NUMBER },
  displayMph: { speedHow: 'display' },
  watchS: { speedHow: 'watch' },
  timings: { speedHow: 'watch' },
  turns: { revRateHow: 'video' },
  frames: { revRateHow: 'video' },
  framesPerSecond: { revRateHow: 'video' },
  ringArcIn: { tiltHow: 'arc' },
  ringDiameterIn: { tiltHow: 'diameter' },
  markAside: { rotationHow: 'picture' },
  ballWidth: { rotationHow: 'picture' },
  ringAsideIn: { papHow: 'ring' },
  ringBelowIn: { papHow: 'ring' },
  lobes: { coreShape: 'lobed' },
  lobeToMark: { coreShape: 'lobed' },
  oldPapOverIn: { oldPap: 'other', drilledBefore: true },
  oldPapUpIn: { oldPap: 'other', drilledBefore: true },
  oldLayout: { drilledBefore: true },
  oldHand: { drilledBefore: true },
  oldThumbHole: { drilledBefore: true },
  oldPap: { drilledBefore: true },
};

const LAYOUT = { layout: '70 x 4 1/2 x 30' };

/** An interview that stands at a question. */
const at = (id: string) => walkTo(id, { ...LAYOUT, ...WAYS[id] }, startInterview(questions)).interview;

describe.each(questions.map((question) => ({ id: question.id, question })))('$id', ({ id, question }) => {
  test('? is one key: it says what is asked for, and goes on where anything can be guessed', () => {
    const interview = at(id);
    const next = answer(interview, UNKNOWN);
    const after = isFault(next) ? interview : next;
    expect(lookedUp(question, after, UNITS.trade)[0]?.length).toBeGreaterThan(10);
    expect(nextQuestion(after)?.id === id).toBe(needsAnswer(question));
  });

  test('Escape goes back to where one came from, and what was answered there is offered', () => {
    const interview = at(id);
    const before = back(interview);
    expect(before.at).toBe(interview.before ? interview.before.at : interview.at);
    expect(answersOf(before)).toEqual(answersOf(interview.before ?? interview));
  });

  test('its term is in the glossary, and what ? says has no marks in it', () => {
    if (question.term !== undefined) expect(findTerm(loadGlossary(), question.term)).toHaveProperty('term');
    expect(meaningOf(question, UNITS.metric)).not.toMatch(/[{}]/);
  });
});

test('every question that can be put before an answer is among eleven, whoever bowls with whatever ball', () => {
  for (const bowler of questions.flatMap((each) =>
    each.id === 'bowler' && each.kind === 'choice' ? each.options : [],
  ))
    for (const ball of ['new:symmetric', 'new:asymmetric', 'plain-medium'])
      if (bowler.value !== FROM_FILE)
        expect(walkTo(null, { bowler: bowler.value, ball }).asked.length).toBeLessThanOrEqual(11);
});

test('a guess follows the kind of bowler and ball, also when these are changed in the review', () => {
  const { interview } = walkTo(null, { axisTiltDeg: UNKNOWN });
  expect(recordsOf(interview).bowler.axisTiltDeg).toBe(14);
  const changed = answer(change(interview, 'bowler'), 'kind:two-handed');
  if (isFault(changed)) throw new Error(changed.rule);
  expect(recordsOf(changed).bowler).toMatchObject({ axisTiltDeg: 8, pap: { overIn: 5.375 } });
  const young = walkTo(null, { bowler: 'kind:young' }).interview;
  expect(recordsOf(young).ball).toMatchObject({ weightLb: 12 });
});

test('every question has a place in some interview', () => {
  for (const { id } of questions) {
    const interview = at(id);
    const question = nextQuestion(interview);
    expect(question?.id).toBe(id);
    expect(question && isPut(question, answersOf(interview))).toBe(true);
  }
});
