import { describe, expect, test } from 'vitest';
import { answer, back, interviewed, isFault, nextQuestion, progress } from '../../src/interview/interview.js';
import { BY_NUMBERS, FROM_FILE, questionsFor } from '../../src/interview/questions.js';
import { DEMO } from '../../src/records/shelf.js';
import { inputErrorOf } from '../records/faults-of.js';
import { give, shelf, start, usualAnswer, walkTo } from './walk.js';

const dataFile = (name: string): string => new URL(`../../data/${name}.json`, import.meta.url).pathname;

describe('questions', () => {
  const questions = questionsFor(shelf);

  test('each has an id of its own, words short enough for a narrow terminal, and help', () => {
    expect(new Set(questions.map(({ id }) => id)).size).toBe(questions.length);
    for (const { id, text, help } of questions) {
      expect(text.length, id).toBeLessThanOrEqual(60 - '14/20  '.length);
      expect(text, id).toMatch(/\?$/);
      expect(help.length, id).toBeGreaterThan(0);
    }
  });

  test('every usual answer is one that may be given', () => {
    for (const question of questions) {
      if (question.kind === 'number') {
        const { interview } = walkTo(question.id, { ball: BY_NUMBERS });
        expect(isFault(answer(interview, question.usual)), question.id).toBe(false);
      }
      if (question.kind === 'choice' && question.usual !== undefined)
        expect(
          question.options.map(({ value }) => value),
          question.id,
        ).toContain(question.usual);
    }
  });
});

describe('a whole interview', () => {
  test('enter all the way, with a ball off the shelf, gives four sound records', () => {
    const { interview, asked } = walkTo(null, { ball: DEMO.ball });
    expect(asked).toEqual(
      'hand thumbHole speedMph revRateRpm axisTiltDeg axisRotationDeg papOverIn papUpIn ball lane hookStart hookShape hookTotal'.split(
        ' ',
      ),
    );
    const { bowler, ball, lane, want } = interviewed(interview, shelf);
    expect(bowler).toMatchObject({ hand: 'right', thumbHole: true, pap: { overIn: expect.any(Number) } });
    expect(ball).toEqual(shelf.balls.find(({ id }) => id === DEMO.ball)?.record);
    expect(lane).toEqual(shelf.lanes.find(({ id }) => id === DEMO.lane)?.record);
    expect(want).toEqual({});
  });

  test('a left-hander without a thumb hole, a lobed ball by its numbers, two wishes', () => {
    const { interview } = walkTo(null, {
      hand: 'left',
      thumbHole: false,
      speedMph: '18.5',
      revRateRpm: '480 rpm',
      axisTiltDeg: '7',
      axisRotationDeg: '66°',
      papOverIn: '5 3/8',
      papUpIn: '1/4 down',
      ball: BY_NUMBERS,
      weightLb: '14',
      rgIn: '2.551',
      differentialIn: '.037',
      intermediateDifferentialIn: '0',
      coreShape: 'lobed',
      pinToCgIn: '2 3/4',
      topWeightOz: '2.8',
      surfaceGrit: '3000',
      lane: 'long',
      hookStart: 5,
      hookTotal: 1,
    });
    expect(interviewed(interview, shelf)).toEqual({
      bowler: {
        schema: 'flarewise/bowler/1',
        name: expect.any(String),
        hand: 'left',
        thumbHole: false,
        speedMph: 18.5,
        revRateRpm: 480,
        axisTiltDeg: 7,
        axisRotationDeg: 66,
        pap: { overIn: 5.375, upIn: -0.25 },
      },
      ball: {
        schema: 'flarewise/ball/1',
        name: expect.any(String),
        weightLb: 14,
        rgIn: 2.551,
        differentialIn: 0.037,
        intermediateDifferentialIn: 0,
        coreShape: 'lobed',
        pinToCgIn: 2.75,
        topWeightOz: 2.8,
        surfaceGrit: 3000,
      },
      lane: shelf.lanes.find(({ id }) => id === 'long')?.record,
      want: { hookStart: 5, hookTotal: 1 },
    });
  });

  test('the core’s shape is asked of a symmetric ball only; a mass bias settles it', () => {
    const byNumbers = { ball: BY_NUMBERS, differentialIn: '0.045' };
    expect(walkTo(null, byNumbers).asked).toContain('coreShape');
    const biased = walkTo(null, { ...byNumbers, intermediateDifferentialIn: '0.012' });
    expect(biased.asked).not.toContain('coreShape');
    expect(interviewed(biased.interview, shelf).ball.coreShape).toBe('asymmetric');
  });

  test('not knowing the core’s shape leaves it open', () => {
    const { interview } = walkTo(null, { ball: BY_NUMBERS, coreShape: undefined });
    expect(interviewed(interview, shelf).ball).not.toHaveProperty('coreShape');
  });

  test('ball and lane may come from files', () => {
    const { interview } = walkTo(null, {
      ball: FROM_FILE,
      ballFile: ` ${dataFile('balls/plain-low')} `,
      lane: FROM_FILE,
      laneFile: dataFile('lanes/dry'),
    });
    const { ball, lane } = interviewed(interview, shelf);
    expect(ball).toEqual(shelf.balls.find(({ id }) => id === 'plain-low')?.record);
    expect(lane).toEqual(shelf.lanes.find(({ id }) => id === 'dry')?.record);
  });
});

describe('bad answers', () => {
  // biome-ignore format: one answer a line
  test.each([
    { at: 'speedMph', given: '170', rule: '8 to 26 mph' },
    { at: 'speedMph', given: 'fast', rule: 'must be a number' },
    { at: 'speedMph', given: '', rule: 'must be a number' },
    { at: 'revRateRpm', given: '4500', rule: '30 to 700 rpm' },
    { at: 'papOverIn', given: '45', rule: '2 to 7.5 in' },
    { at: 'papUpIn', given: '-1/4 down', rule: 'must be a number' },
    { at: 'rgIn', given: '6.4', rule: '2.4 to 2.8 in' },
    { at: 'intermediateDifferentialIn', given: '0.055', rule: 'must not exceed the total differential (0.04 in)' },
    { at: 'hand', given: 'both', rule: 'one of the answers shown' },
    { at: 'hookStart', given: 6, rule: 'one of the answers shown' },
  ])('$given at $at is refused with its rule, and the question stands', ({ at, given, rule }) => {
    const { interview } = walkTo(at, { ball: BY_NUMBERS });
    const fault = answer(interview, given);
    expect(isFault(fault) && fault.rule).toContain(rule);
    expect(isFault(fault) && fault.got).toBe(JSON.stringify(given));
    expect(nextQuestion(interview)?.id).toBe(at);
  });

  test('a file that cannot be used says why, as on the command line', () => {
    const { interview } = walkTo('ballFile', { ball: FROM_FILE });
    const missing = answer(interview, 'nowhere.json');
    expect(isFault(missing) && missing.got).toContain('does not exist');
    const lane = answer(interview, dataFile('lanes/dry'));
    expect(isFault(lane) && lane.got).toContain('flarewise/lane/1');
  });
});

describe('back', () => {
  test('at the first question it changes nothing', () => {
    expect(nextQuestion(back(start()))?.id).toBe('hand');
  });

  test('undoes one answer, keeps it as the next offer, and the new one counts', () => {
    const { interview } = walkTo('axisTiltDeg', { revRateRpm: '300' });
    const again = back(interview);
    expect(nextQuestion(again)?.id).toBe('revRateRpm');
    expect(again.answers.revRateRpm).toBe(300);
    const { interview: done } = walkTo(null, { revRateRpm: '350', ball: DEMO.ball }, again);
    expect(interviewed(done, shelf).bowler.revRateRpm).toBe(350);
  });

  test('from the end to the beginning asks everything once more, in order', () => {
    const { interview, asked } = walkTo(null, { ball: BY_NUMBERS });
    let at = interview;
    const undone: (string | undefined)[] = [];
    for (let i = 0; i < asked.length; i++) {
      at = back(at);
      undone.unshift(nextQuestion(at)?.id);
    }
    expect(undone).toEqual(asked);
    expect(walkTo(null, { ball: BY_NUMBERS }, at).asked).toEqual(asked);
  });

  test('answers of a branch that was left do not reach the records', () => {
    const { interview } = walkTo('intermediateDifferentialIn', { ball: BY_NUMBERS, differentialIn: '0.045' });
    const lobed = walkTo('pinToCgIn', { coreShape: 'lobed' }, interview).interview;
    const biased = walkTo(null, { intermediateDifferentialIn: '0.012' }, back(back(lobed))).interview;
    expect(interviewed(biased, shelf).ball).toMatchObject({
      coreShape: 'asymmetric',
      intermediateDifferentialIn: 0.012,
    });
  });
});

describe('progress', () => {
  test('counts from 1 to the number of questions put, and never beyond', () => {
    let interview = start();
    for (let place = 1, question = nextQuestion(interview); question; place += 1) {
      expect(progress(interview).place).toBe(place);
      expect(progress(interview).of).toBeGreaterThanOrEqual(place);
      interview = give(interview, question.id === 'ball' ? BY_NUMBERS : usualAnswer(question));
      question = nextQuestion(interview);
    }
    expect(interview.answered.length).toBe(progress(interview).of);
  });

  test('of a finished interview there is nothing more to answer', () => {
    const { interview } = walkTo(null, { ball: DEMO.ball });
    expect(answer(interview, 'anything')).toBe(interview);
  });
});

test('a wish of a step that is none is refused at the end as well', () => {
  const { interview } = walkTo(null, { ball: DEMO.ball });
  const forged = { ...interview, answers: { ...interview.answers, hookStart: 9 } };
  expect(inputErrorOf(() => interviewed(forged, shelf)).faults).toMatchObject([{ field: 'hookStart' }]);
});
