import { describe, expect, test } from 'vitest';
import { draftOf, resumed } from '../../src/interview/draft.js';
import { isFault } from '../../src/interview/given-value.js';
import {
  answer,
  answersOf,
  back,
  change,
  givenBefore,
  nextQuestion,
  progress,
  startInterview,
} from '../../src/interview/interview.js';
import { AS_NUMBER, UNKNOWN } from '../../src/interview/questions/answers.js';
import { ALL_NEEDS } from '../../src/interview/questions/needs.js';
import { FROM_FILE } from '../../src/interview/questions/question.js';
import { questionsFor } from '../../src/interview/questions/questions.js';
import { isPut } from '../../src/interview/settled.js';
import { DEMO } from '../../src/records/read/shelf.js';
import { UNITS } from '../../src/report/text/display-units.js';
import { inputErrorOf } from '../support/faults-of.js';
import { give, recordsOf, shelf, start, usualAnswer, walkTo } from '../support/interview/walk.js';

/** Answers after which a reading is asked for. */
function waysTo(id: string): Record<string, unknown> {
  for (const [how, way, readings] of WAYS) if (readings.split(' ').includes(id)) return { [how]: way };
  if (id.endsWith('Number')) return { [id.slice(0, -'Number'.length)]: AS_NUMBER };
  return USED.includes(id) ? { drilledBefore: true, oldPap: 'other' } : {};
}

/** Layouts are as the trade writes them, RG and differentials as makers publish them. */
const AS_PUBLISHED: readonly string[] = ['oldLayout', 'rgIn', 'differentialIn', 'intermediateDifferentialIn'];

const USED: readonly string[] = ['oldPapOverIn', 'oldPapUpIn'];

const WAYS = [
  ['speedHow', 'display', 'displayMph'],
  ['speedHow', 'watch', 'watchS timings'],
  ['revRateHow', 'video', 'turns frames framesPerSecond'],
  ['tiltHow', 'arc', 'ringArcIn'],
  ['tiltHow', 'diameter', 'ringDiameterIn'],
  ['rotationHow', 'picture', 'markAside ballWidth'],
  ['papHow', 'ring', 'ringAsideIn ringBelowIn'],
] as const;

const dataFile = (name: string): string => new URL(`../../data/${name}.json`, import.meta.url).pathname;

const NEW_BALL = 'new:symmetric';

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
        const { interview } = walkTo(question.id, { ...waysTo(question.id), ball: NEW_BALL });
        expect(isFault(answer(interview, question.usual(answersOf(interview)))), question.id).toBe(false);
      }
      if (question.kind === 'choice' && question.usual !== undefined)
        expect(
          question.options.map(({ value }) => value),
          question.id,
        ).toContain(question.usual({}));
    }
  });
});

describe('a whole interview', () => {
  test('enter all the way, with a ball off the shelf, gives four sound records', () => {
    const { interview, asked } = walkTo(null, { ball: DEMO.ball });
    expect(asked).toEqual(
      'bowler hand speedMph revRateRpm axisTiltDeg axisRotationDeg ball lane hookStart sharpness totalHook'.split(
        ' ',
      ),
    );
    const { bowler, ball, lane, want } = recordsOf(interview);
    expect(asked).toHaveLength(11); // and no more
    expect(bowler).toMatchObject({ hand: 'right', thumbHole: true, pap: { overIn: expect.any(Number) } });
    expect(ball).toEqual(shelf.balls.find(({ id }) => id === DEMO.ball)?.record);
    expect(lane).toEqual(shelf.lanes.find(({ id }) => id === DEMO.lane)?.record);
    expect(want).toEqual({});
  });

  test('a left-hander without a thumb hole, a lobed ball by its numbers, two wishes', () => {
    const { interview } = walkTo(null, {
      hand: 'left-no-thumb',
      skill: 'league',
      speedMph: '18.5',
      revRateRpm: '480 rpm',
      axisTiltDeg: '7',
      axisRotationDeg: '66°',
      papOverIn: '5 3/8',
      papUpIn: '1/4 down',
      ball: NEW_BALL,
      weightLb: '14',
      rgIn: '2.551',
      differentialIn: '.037',
      intermediateDifferentialIn: '0',
      coreShape: 'lobed',
      lobes: 3,
      lobeToMark: false,
      pinToCgIn: '2 3/4',
      topWeightOz: '2.8',
      surfaceGrit: '3000',
      lane: 'long',
      hookStart: 5,
      totalHook: 1,
    });
    expect(recordsOf(interview)).toEqual({
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
        skill: 'league',
      },
      ball: {
        schema: 'flarewise/ball/1',
        name: expect.any(String),
        weightLb: 14,
        rgIn: 2.551,
        differentialIn: 0.037,
        intermediateDifferentialIn: 0,
        coreShape: 'lobed',
        lobes: 3,
        lobeFromMarkDeg: 60,
        pinToCgIn: 2.75,
        topWeightOz: 2.8,
        surfaceGrit: 3000,
      },
      lane: shelf.lanes.find(({ id }) => id === 'long')?.record,
      want: { hookStart: 5, totalHook: 1 },
      layout: '',
      keep: { bowler: undefined, ball: undefined },
    });
  });

  test('the core’s shape is asked of a symmetric ball only; a mass bias settles it', () => {
    const byNumbers = { ball: NEW_BALL, differentialIn: '0.045' };
    const shape = { coreShape: 'plain' };
    expect(walkTo(null, { ...byNumbers, ...shape }).asked).toContain('coreShape');
    const biased = walkTo(null, { ...byNumbers, ...shape, intermediateDifferentialIn: '0.012' });
    expect(biased.asked).not.toContain('coreShape');
    expect(recordsOf(biased.interview).ball).toMatchObject({ coreShape: 'asymmetric' });
  });

  test('noses are asked of a lobed ball only, and their direction only when there is a CG mark to see it from', () => {
    const lobed = { ball: NEW_BALL, coreShape: 'lobed' };
    expect(walkTo(null, lobed).asked).toEqual(expect.arrayContaining(['lobes', 'lobeToMark']));
    for (const coreShape of ['plain', UNKNOWN])
      expect(walkTo(null, { ...lobed, coreShape }).asked).not.toContain('lobes');
    const { asked } = walkTo(null, { ...lobed, pinToCgIn: '0' });
    expect(asked).toContain('lobes');
    expect(asked).not.toContain('lobeToMark');
  });

  test('not knowing the noses leaves them open', () => {
    const { interview } = walkTo(null, {
      ball: NEW_BALL,
      coreShape: 'lobed',
      lobes: UNKNOWN,
      lobeToMark: UNKNOWN,
    });
    const { ball } = recordsOf(interview);
    expect(ball).not.toHaveProperty('lobes');
    expect(ball).not.toHaveProperty('lobeFromMarkDeg');
  });

  test('not knowing the core’s shape leaves it open', () => {
    const { interview } = walkTo(null, { ball: NEW_BALL, coreShape: UNKNOWN });
    expect(recordsOf(interview).ball).not.toHaveProperty('coreShape');
  });

  test('ball and lane may come from files', () => {
    const { interview } = walkTo(null, {
      ball: FROM_FILE,
      ballFile: ` ${dataFile('balls/plain-low')} `,
      lane: FROM_FILE,
      laneFile: dataFile('lanes/dry'),
    });
    const { ball, lane } = recordsOf(interview);
    expect(ball).toEqual(shelf.balls.find(({ id }) => id === 'plain-low')?.record);
    expect(lane).toEqual(shelf.lanes.find(({ id }) => id === 'dry')?.record);
  });
});

describe('a used ball', () => {
  const used = { ball: NEW_BALL, drilledBefore: true };
  const drilledBefore = (answers: Record<string, unknown>) =>
    recordsOf(walkTo(null, answers).interview).ball.drilledBefore;

  test('new, or not known to be used, has no earlier drilling and is asked no more about it', () => {
    for (const given of [false, UNKNOWN]) {
      const { interview, asked } = walkTo(null, { ...used, drilledBefore: given });
      expect(recordsOf(interview).ball).not.toHaveProperty('drilledBefore');
      expect(asked).not.toContain('oldLayout');
    }
  });

  test('an earlier drilling that is known whole', () => {
    expect(
      drilledBefore({
        ...used,
        oldLayout: '4 1/2 x 3 3/8 x 2 below',
        oldHand: 'left',
        oldThumbHole: false,
        oldPap: 'other',
        oldPapOverIn: '5 1/4',
        oldPapUpIn: '1/2 down',
      }),
    ).toEqual([
      {
        layoutDistances: '4.5 x 3.375 x 2',
        pinSide: 'below',
        hand: 'left',
        pap: { overIn: 5.25, upIn: -0.5 },
        grip: expect.objectContaining({ thumb: null }),
      },
    ]);
  });

  test('an earlier drilling of which nothing is known is that of the bowler, in the usual middle layout', () => {
    const nothing = { oldLayout: '?', oldHand: UNKNOWN, oldThumbHole: UNKNOWN, oldPap: UNKNOWN };
    const answers = { ...used, ...nothing, hand: 'left', papOverIn: '5', papUpIn: '0' };
    expect(drilledBefore(answers)).toEqual([
      { layout: '50 x 4.5 x 35', hand: 'left', pap: { overIn: 5, upIn: 0 } },
    ]);
    expect(recordsOf(walkTo(null, answers).interview).ball.note).toBe(
      'Not known, and guessed: weight, RG, differential, mass bias, pin to CG, top weight, old layout, old hand, old thumb hole, old PAP.',
    );
  });

  test('a guessed number of the ball says how far off it may be; a published one does not', () => {
    const known = { ball: 'new:asymmetric', rgIn: '2.48', differentialIn: '0.05' };
    expect(recordsOf(walkTo(null, known).interview).ball).toMatchObject({
      rgIn: 2.48,
      uncertainty: { intermediateDifferentialIn: 0.004, pinToCgIn: 0.5, topWeightOz: 0.5 },
    });
    const all = { ...known, intermediateDifferentialIn: '0.012', pinToCgIn: '3', topWeightOz: '2.5' };
    expect(recordsOf(walkTo(null, all).interview).ball).not.toHaveProperty('uncertainty');
    // a symmetric ball is known to have no mass bias
    expect(recordsOf(walkTo(null, { ball: 'new:symmetric' }).interview).ball).toHaveProperty('uncertainty', {
      rgIn: 0.03,
      differentialIn: 0.01,
      pinToCgIn: 0.5,
      topWeightOz: 0.5,
    });
  });

  test('a drilling angle to a mark that the ball has not is refused; so is what is no layout', () => {
    const { interview } = walkTo('oldLayout', used);
    const refused = (given: string): string => (answer(interview, given) as { rule: string }).rule;
    expect(refused('70 mb x 4 1/2 x 30')).toContain('to the CG mark');
    expect(refused('70')).toContain('three numbers');
    expect(refused('70 x 4 1/2 x 2 in')).toContain('give a VAL angle in place of the pin buffer');
    expect(isFault(answer(interview, '70 cg x 4 1/2 x 30'))).toBe(false);
  });
});

describe('in metric units', () => {
  const questions = questionsFor(shelf, UNITS.metric);
  const startMetric = () => startInterview(questions);

  test('no question names a unit of the other system, and every usual answer may be given', () => {
    for (const { text, help } of questions.filter(({ id }) => !AS_PUBLISHED.includes(id)))
      expect(`${text} ${help}`).not.toMatch(/mph|inches|pounds|ounces|\d (in|lb|oz)\b/);
    const numbers = questions.filter(({ kind, givesUp }) => kind === 'number' && !givesUp);
    let { interview } = walkTo(null, { ball: NEW_BALL }, startMetric());
    expect(recordsOf(interview).ball).toMatchObject({ weightLb: 15, rgIn: 2.53, pinToCgIn: 2.75 }); // guesses are exact
    for (const question of numbers) {
      const answers = answersOf(interview);
      if (question.kind !== 'number' || !isPut(question, answers)) continue;
      interview = give(change(interview, question.id), question.usual(answers));
    }
    const { bowler, ball } = recordsOf(interview);
    expect(bowler.speedMph).toBeCloseTo(17.5, 1); // 28.2 km/h, to a tenth
    expect(ball.weightLb).toBeCloseTo(15, 1);
  });

  test('answers come in km/h, mm, kg and g, or with a unit of their own; records stay as they were', () => {
    const { interview } = walkTo(
      null,
      {
        speedMph: '28.968192',
        papOverIn: '127',
        papUpIn: '12.7 mm down',
        ball: NEW_BALL,
        weightLb: '15 lb',
        rgIn: '2.53 in',
      },
      startMetric(),
    );
    const { bowler, ball } = recordsOf(interview);
    expect(bowler.speedMph).toBeCloseTo(18, 12); // 1 mph is 1.609344 km/h, exactly
    expect(bowler.pap.overIn).toBeCloseTo(5, 12);
    expect(bowler.pap.upIn).toBeCloseTo(-0.5, 12);
    expect(ball).toMatchObject({ weightLb: 15, rgIn: 2.53 });
  });

  test('a range is told in the unit asked for', () => {
    const fault = answer(walkTo('speedMph', {}, startMetric()).interview, '17.5 kmh');
    expect(isFault(fault)).toBe(false); // 17.5 km/h are 10.9 mph: slow, but possible
    const slow = answer(walkTo('speedMph', {}, startMetric()).interview, '10');
    expect(isFault(slow) && slow.rule).toBe('must be 12.87 to 41.84 km/h');
  });

  test('an interview left in one unit goes on in another', () => {
    const left = draftOf(walkTo('axisTiltDeg', { speedMph: '28.968192' }, startMetric()).interview);
    const again = resumed(questionsFor(shelf), JSON.parse(JSON.stringify(left)));
    expect(answersOf(again).speedMph).toBeCloseTo(18, 12);
  });
});

describe('a bowler who knows none of the numbers', () => {
  const nothing = Object.fromEntries(
    'speedMph revRateRpm axisTiltDeg axisRotationDeg'.split(' ').map((id) => [id, UNKNOWN]),
  );

  test('every number can be guessed by the kind of bowler, and each says how far off it may be', () => {
    const byKey = walkTo(null, { ...nothing, bowler: 'kind:two-handed', ball: DEMO.ball });
    const guess = {
      speedHow: 'guess',
      revRateHow: 'guess',
      tiltHow: 'guess',
      rotationHow: 'guess',
      papHow: 'guess',
    };
    const { interview } = walkTo(null, {
      ...guess,
      bowler: 'kind:two-handed',
      ball: DEMO.ball,
    });
    expect(recordsOf(interview)).toEqual(recordsOf(byKey.interview)); // ? is one key for the same
    const { bowler } = recordsOf(interview);
    expect(bowler).toMatchObject({ speedMph: 18, revRateRpm: 460, pap: { overIn: 5.375, upIn: 1 } });
    expect(Object.keys(bowler.uncertainty ?? {})).toHaveLength(6);
    expect(bowler.uncertainty).toMatchObject({ papOverIn: 0.4 });
  });

  test('every number can be measured', () => {
    const { interview, asked } = walkTo(null, {
      ...nothing,
      speedHow: 'watch',
      watchS: '2.4',
      timings: '4',
      revRateHow: 'video',
      turns: '2 1/2',
      frames: '60',
      framesPerSecond: '120',
      tiltHow: 'arc',
      ringArcIn: '11 1/2',
      rotationHow: 'picture',
      markAside: '2',
      ballWidth: '6',
      papHow: 'ring',
      ringAsideIn: '3/4',
      ringBelowIn: '6',
      ball: DEMO.ball,
    });
    expect(asked).not.toContain('papUpIn'); // the ring tells it
    const { bowler } = recordsOf(interview);
    // 60 ft in 2.4 s are 17.05 mph; 2.5 turns in half a second 300 rpm; 13.5 − 11.5 in of arc 13.33°: exact
    expect(bowler.speedMph).toBeCloseTo(17.05 + 1.6, 2);
    expect(bowler.revRateRpm).toBe(300);
    expect(bowler.axisTiltDeg).toBeCloseTo(13.33, 2);
    expect(bowler.axisRotationDeg).toBeCloseTo(
      (Math.acos(2 / 3 / Math.cos((13.33 * Math.PI) / 180)) * 180) / Math.PI,
      1,
    );
    expect(bowler.pap.overIn).toBeCloseTo(5, 1);
    expect(bowler.uncertainty?.papUpIn).toBeGreaterThan(0);
  });

  test('only what was not known is uncertain', () => {
    const pap = { papOverIn: '5', papUpIn: '0' };
    const { interview } = walkTo(null, { ...pap, tiltHow: 'diameter', ball: DEMO.ball });
    expect(Object.keys(recordsOf(interview).bowler.uncertainty ?? {})).toEqual(['axisTiltDeg']);
  });

  // biome-ignore format: one case a line
  test.each([
    { way: { speedHow: 'display' }, at: 'displayMph', given: '25', rule: 'makes ball speed at release 26.6 mph, which must be 8 to 26 mph' },
    { way: { revRateHow: 'video', frames: '2' }, at: 'framesPerSecond', given: '60', rule: 'makes rev rate 3600 rpm, which must be 30 to 700 rpm' },
    { way: { revRateHow: 'video', turns: '1/4', frames: '2' }, at: 'framesPerSecond', given: '60', rule: 'leaves rev rate unsure by 243.03 rpm, which must be 0 to 200 rpm' },
    { way: { axisTiltDeg: '60', rotationHow: 'picture', markAside: '3' }, at: 'ballWidth', given: '6', rule: 'must show the mark nearer the ball’s centre at this axis tilt' },
    { way: { papHow: 'ring', ringAsideIn: '1' }, at: 'ringBelowIn', given: '1/2', rule: 'no ring crosses at both' },
    { way: { axisTiltDeg: '60', papHow: 'ring', ringAsideIn: '2' }, at: 'ringBelowIn', given: UNKNOWN, rule: 'makes PAP over 0.24 in, which must be 2 to 7.5 in' },
  ])('readings that make no bowler are refused at $at', ({ way, at, given, rule }) => {
    const { interview } = walkTo(at, way);
    const fault = answer(interview, given);
    expect(isFault(fault) && fault.rule).toContain(rule);
    expect(isFault(fault) && fault.hint).toContain('<');
    expect(nextQuestion(interview)?.id).toBe(at);
  });

  test('what readings make is refused in the unit the person uses', () => {
    const metric = startInterview(questionsFor(shelf, UNITS.metric));
    const ring = { axisTiltDeg: '60', papHow: 'ring', ringAsideIn: '50' };
    const fault = answer(walkTo('ringBelowIn', ring, metric).interview, UNKNOWN);
    expect(isFault(fault) && fault.rule).toMatch(/makes PAP over [\d.]+ mm, which must be 50.8 to 190.5 mm/);
  });

  test('a reading that is not known makes the number a guess, not a measured one', () => {
    const { interview } = walkTo('timings', { speedHow: 'watch', watchS: '2.4' });
    const { bowler } = recordsOf(give(interview, UNKNOWN));
    expect(bowler).toMatchObject({ speedMph: 17.5, uncertainty: { speedMph: 1.2 } });
  });

  test('a number of the ball that is not known is guessed, and its record says so', () => {
    const { ball } = recordsOf(give(walkTo('rgIn', { ball: NEW_BALL }).interview, UNKNOWN));
    expect(ball).toMatchObject({ rgIn: 2.53, note: expect.stringContaining('RG') });
    const typed = recordsOf(give(walkTo('rgIn', { ball: NEW_BALL }).interview, '2.48')).ball;
    expect(typed).toMatchObject({ rgIn: 2.48, note: expect.not.stringContaining('RG') });
  });

  test('skill and finish that were not asked for are left to what the computation assumes', () => {
    const { bowler, ball } = recordsOf(walkTo(null, { ball: NEW_BALL }).interview);
    expect(bowler).not.toHaveProperty('skill');
    expect(ball).not.toHaveProperty('surfaceGrit');
  });
});

describe('bowlers of the shelf, and names to keep', () => {
  test('a bowler of the shelf is asked nothing about the release', () => {
    const { interview, asked } = walkTo(null, { bowler: 'two-handed', ball: DEMO.ball });
    expect(asked).toEqual(['bowler', 'ball', 'lane', 'hookStart', 'sharpness', 'totalHook']);
    expect(recordsOf(interview).bowler.name).toBe('Two-handed, no thumb hole');
  });

  test('bowler and ball that were asked may be kept under names', () => {
    const { interview } = walkTo(null, { ball: NEW_BALL, keepBowler: ' Kim ', keepBall: 'Red one' });
    const { bowler, ball, keep } = recordsOf(interview);
    expect(keep).toEqual({ bowler: 'Kim', ball: 'Red one' });
    expect([bowler.name, ball.name]).toEqual(['Kim', 'Red one']);
  });
});

describe('an interview that was left', () => {
  const questions = questionsFor(shelf);

  test.each([1, 5, 11])('goes on after %i answers as if it had never been left', (count) => {
    const answers = { hand: 'left', axisTiltDeg: UNKNOWN, papOverIn: '5 1/8', ball: NEW_BALL };
    const { asked, interview: whole } = walkTo(null, answers);
    const { interview } = walkTo(asked[count] ?? null, answers);
    const saved = JSON.parse(JSON.stringify(draftOf(interview)));
    const again = resumed(questions, saved);
    expect(Object.keys(again.replies)).toEqual(asked.slice(0, count));
    expect(recordsOf(walkTo(null, answers, again).interview)).toEqual(recordsOf(whole));
  });

  test('an answer that may no longer be given ends what is taken up', () => {
    const saved = [
      ['bowler', 'kind:usual'],
      ['hand', 'third'],
      ['kind', 'usual'],
    ] as const;
    const again = resumed(questions, saved);
    expect(Object.keys(again.replies)).toEqual(['bowler']);
    expect(again.at).toBe('hand');
  });

  test('what no one can have typed or chosen is dropped', () => {
    const again = resumed(questions, [
      ['bowler', 'kind:usual'],
      ['pinToCgIn', { toString: 0 }],
    ]);
    expect(Object.keys(again.replies)).toEqual(['bowler']);
  });

  test('in another command only what that one asks besides is put, and the rest stands', () => {
    const draft = draftOf(walkTo(null, { speedMph: '19', ball: NEW_BALL, rgIn: '2.5' }).interview);
    const judging = resumed(questionsFor(shelf, UNITS.trade, { ...ALL_NEEDS, layout: true }), draft);
    expect(judging.at).toBe('layout');
    const done = give(judging, '70 x 4 1/2 x 30');
    expect(done.at).toBeNull();
    expect(recordsOf(done)).toMatchObject({
      layout: '70 x 4 1/2 x 30',
      bowler: { speedMph: 19 },
      ball: { rgIn: 2.5 },
    });
  });

  test('who leaves after going back loses nothing', () => {
    const { interview } = walkTo('ball', { speedMph: '19' });
    const draft = draftOf(back(back(back(back(interview)))));
    const again = resumed(questions, draft);
    expect(again.at).toBe('ball');
    expect(answersOf(again)).toEqual(answersOf(interview));
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
    const { interview } = walkTo(at, { ball: NEW_BALL });
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
    expect(nextQuestion(back(start()))?.id).toBe('bowler');
  });

  test('undoes one answer, keeps it as the next offer, and the new one counts', () => {
    const { interview } = walkTo('axisTiltDeg', { revRateRpm: '300' });
    const again = back(interview);
    expect(nextQuestion(again)?.id).toBe('revRateRpm');
    expect(givenBefore(again, 'revRateRpm')).toBe('300');
    const { interview: done } = walkTo(null, { revRateRpm: '350', ball: DEMO.ball }, again);
    expect(recordsOf(done).bowler.revRateRpm).toBe(350);
  });

  test('from the end to the beginning asks everything once more, in order', () => {
    const { interview, asked } = walkTo(null, { ball: NEW_BALL });
    let at = interview;
    const undone: (string | undefined)[] = [];
    for (let i = 0; i < asked.length; i++) {
      at = back(at);
      undone.unshift(nextQuestion(at)?.id);
    }
    expect(undone).toEqual(asked);
    expect(walkTo(null, { ball: NEW_BALL }, at).asked).toEqual(asked);
  });

  test('answers of a branch that was left do not reach the records', () => {
    const { interview } = walkTo('intermediateDifferentialIn', { ball: NEW_BALL, differentialIn: '0.045' });
    const lobed = walkTo('pinToCgIn', { coreShape: 'lobed' }, interview).interview;
    const biased = walkTo(null, { intermediateDifferentialIn: '0.012' }, back(back(lobed))).interview;
    expect(recordsOf(biased).ball).toMatchObject({
      coreShape: 'asymmetric',
      intermediateDifferentialIn: 0.012,
    });
  });
});

describe('progress', () => {
  test('counts from 1 to the number of questions put, and never beyond', () => {
    let interview = start();
    for (let place = 1, question = nextQuestion(interview); question; place += 1) {
      expect(progress(interview)).toEqual({ place, of: 11 });
      interview = give(interview, usualAnswer(question, answersOf(interview)));
      question = nextQuestion(interview);
    }
    expect(Object.keys(interview.replies)).toHaveLength(11);
    expect(progress(interview)).toBeNull();
    expect(progress(change(interview, 'rgIn'))).toBeNull();
  });

  test('of a finished interview there is nothing more to answer', () => {
    const { interview } = walkTo(null, { ball: DEMO.ball });
    expect(answer(interview, 'anything')).toBe(interview);
  });
});

test('a wish of a step that is none is refused at the end as well', () => {
  const { interview } = walkTo(null, { ball: DEMO.ball });
  const forged = {
    ...interview,
    replies: { ...interview.replies, hookStart: { given: 9, value: { value: 9 } } },
  };
  expect(inputErrorOf(() => recordsOf(forged)).faults).toMatchObject([{ field: 'hookStart' }]);
});
