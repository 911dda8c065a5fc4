import { describe, expect, test } from 'vitest';
import { InputError } from '../../src/base/errors.js';
import { faultPlace } from '../../src/interview/fault-place.js';
import { change, clashes, startInterview } from '../../src/interview/interview.js';
import { UNKNOWN } from '../../src/interview/questions/answers.js';
import { ALL_NEEDS } from '../../src/interview/questions/needs.js';
import { questionsFor } from '../../src/interview/questions/questions.js';
import { recap } from '../../src/interview/recap.js';
import { lineFor, reviewLines } from '../../src/interview/review-lines.js';
import { unknownFields } from '../../src/interview/unknown-fields.js';
import { wrongAnswer } from '../../src/interview/wrong-answer.js';
import { UNITS } from '../../src/report/text/display-units.js';
import { give, shelf, walkTo } from '../support/interview/walk.js';

const linesOf = (
  answers: Record<string, unknown>,
  page: 'main' | 'bowler' | 'ball' = 'main',
): Record<string, string> =>
  Object.fromEntries(
    reviewLines(walkTo(null, answers).interview, page, UNITS.trade).map(({ label, value, status }) => [
      label,
      status ? `${value} (${status})` : value,
    ]),
  );

describe('reviewLines', () => {
  test('show what was answered, guessed, measured, and how far off each may be', () => {
    expect(
      linesOf({
        speedMph: '17',
        revRateRpm: '300-340',
        axisTiltDeg: UNKNOWN,
        rotationHow: 'picture',
        papUpIn: '1/4 down',
        papOverIn: '5 1/8',
        hookStart: 4,
        totalHook: 'number',
        totalHookNumber: '22',
      }),
    ).toMatchObject({
      'Ball speed': '17 mph',
      'Rev rate': '320 rpm (± 20 rpm)',
      'Axis tilt': '14 degrees (guess, ± 5 deg)',
      'Axis rotation': expect.stringContaining('(measured, ± '),
      PAP: '5 1/8 in over, 1/4 in down',
      RG: '2.53 in (guess, ± 0.03 in)',
      'Hook start': 'Late',
      'Total hook': '22 boards',
    });
    // a number typed in another unit has no more digits than were typed
    expect(linesOf({ speedMph: '27 km/h' })).toMatchObject({ 'Ball speed': '16.8 mph' });
    expect(linesOf({ speedMph: '27-28 km/h' })).toMatchObject({ 'Ball speed': '17.1 mph (± 0.311 mph)' });
    // the greater of over and up, as the answer has it
    expect(linesOf({}, 'main')).toMatchObject({ PAP: '4 7/8 in over, 3/8 in up (guess, ± 0.45 in)' });
    expect(linesOf({ drilledBefore: true }, 'ball')).toMatchObject({
      'Old layout': '50 x 4 1/2 x 35 (guess)',
      'Pin to CG': '2 3/4 in (guess, ± 0.5 in)',
    });
  });

  test('never more than fit on a screen of 24 with title and two lines of help, with a layout as well', () => {
    const questions = questionsFor(shelf, UNITS.trade, { ...ALL_NEEDS, layout: true });
    const { interview } = walkTo(null, { layout: '70 x 4 1/2 x 30' }, startInterview(questions));
    expect(reviewLines(interview, 'main', UNITS.trade)).toHaveLength(20);
    for (const page of ['bowler', 'ball'] as const)
      expect(
        reviewLines(
          walkTo(null, { drilledBefore: true, oldPap: 'other', coreShape: 'lobed' }).interview,
          page,
          UNITS.trade,
        ).length,
      ).toBeLessThanOrEqual(21);
  });

  test('of a bowler and a ball on the shelf there is one line each', () => {
    expect(Object.keys(linesOf({ bowler: 'two-handed', ball: 'plain-low' }))).toEqual([
      'Go on',
      'Bowler',
      'Ball',
      'Lane',
      'Hook start',
      'Sharpness',
      'Total hook',
    ]);
  });

  test('every question that is put has a line it can be changed at', () => {
    const { interview } = walkTo(null, {
      drilledBefore: true,
      oldPap: 'other',
      coreShape: 'lobed',
      papHow: 'ring',
    });
    for (const { id, when } of interview.questions)
      if (!when || interview.replies[id])
        expect(lineFor(interview, id, UNITS.trade).line, id).toBeGreaterThan(0);
  });
});

test('replies that no longer go together are found after a change, each with its rule', () => {
  const { interview } = walkTo(null, { differentialIn: '0.05', intermediateDifferentialIn: '0.03' });
  expect(clashes(interview)).toEqual([]);
  const changed = give(change(interview, 'differentialIn'), '0.02');
  expect(clashes(changed)).toMatchObject([
    { id: 'intermediateDifferentialIn', fault: { rule: 'must not exceed the total differential (0.02 in)' } },
  ]);
});

describe('faultPlace', () => {
  const questions = questionsFor(shelf, UNITS.trade, { ...ALL_NEEDS, layout: true });
  test.each([
    ['ball.rgIn', 'rgIn'],
    ['topWeightOz', 'topWeightOz'],
    ['bowler.grip.thumb', 'hand'],
    ['bowler.revRateRpm', 'revRateRpm'],
    ['layout: drilling angle', 'layout'],
    ['drilledBefore[0].layout', 'oldLayout'],
    ['pap.overIn', 'papHow'],
    ['cover.thickness', 'ball'],
    ['something', null],
  ])('%s is at %s', (field, id) => {
    expect(faultPlace({ field, rule: 'must be', got: '1' }, questions)).toBe(id);
  });

  test('of a record the fault is at the record, and of one that was not asked for nowhere', () => {
    const { interview } = walkTo(null, { bowler: 'two-handed', ball: 'plain-low' });
    const placeOf = (field: string, from = interview) =>
      wrongAnswer(new InputError('bad', { field, rule: 'must be', got: '1' }), from, UNITS.trade)?.at;
    expect(placeOf('bowler.grip.thumb')).toBe('bowler');
    expect(placeOf('ball.rgIn')).toBe('ball');
    const laneOnly = startInterview(
      questionsFor(shelf, UNITS.trade, { ...ALL_NEEDS, bowler: false, ball: false }),
    );
    expect(placeOf('ball.rgIn', laneOnly)).toBeUndefined();
  });
});

describe('unknownFields', () => {
  test('names every field that was guessed or is known only about, each with its question', () => {
    const { interview } = walkTo(null, { axisTiltDeg: UNKNOWN, revRateRpm: '300-340' });
    const fields = unknownFields(interview);
    expect(fields.slice(0, 4)).toEqual([
      { field: 'bowler.revRateRpm', ask: 'revRateHow' },
      { field: 'bowler.axisTiltDeg', ask: 'tiltHow' },
      { field: 'bowler.pap.overIn', ask: 'papHow' },
      { field: 'bowler.pap.upIn', ask: 'papHow' },
    ]);
    expect(fields.map(({ field }) => field)).toEqual(
      expect.arrayContaining([
        'bowler.skill',
        'ball.rgIn',
        'ball.coreShape',
        'ball.surfaceGrit',
        'ball.drilledBefore',
      ]),
    );
    for (const { ask } of fields) expect(change(interview, ask).at).toBe(ask);
  });

  test('what is given then is no longer among them', () => {
    const { interview } = walkTo(null, { rgIn: '2.5', papOverIn: '5', papUpIn: '0' });
    const fields = unknownFields(interview).map(({ field }) => field);
    expect(fields).not.toContain('ball.rgIn');
    expect(fields).not.toContain('bowler.pap.overIn');
    expect(unknownFields(walkTo(null, { bowler: 'two-handed', ball: 'plain-low' }).interview)).toEqual([]);
  });
});

test('a recap names what was answered, not what was guessed', () => {
  const { interview } = walkTo('axisRotationDeg', { speedMph: '18', axisTiltDeg: UNKNOWN });
  const text = recap(interview, UNITS.trade);
  expect(text).toContain('Ball speed 18 mph; Rev rate 310 rpm.');
  expect(text).not.toContain('tilt');
  const { interview: inKmh } = walkTo('axisRotationDeg', { speedMph: '27 km/h' });
  expect(recap(inKmh, UNITS.trade)).toContain('Ball speed 16.8 mph;');
  expect(inKmh.replies.speedMph?.value?.value).toBeCloseTo(27 / 1.609344, 12); // kept as it is
  expect(recap(interview, UNITS.trade, 60)).toMatch(/^So far: Bowler [^;]*; and 3 more\.$/);
  expect(recap(walkTo('hand', { bowler: UNKNOWN }).interview, UNITS.trade)).toBe(
    'So far nothing but guesses.',
  );
});
