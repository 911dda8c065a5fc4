import { describe, expect, test } from 'vitest';
import { draftOf, resumed } from '../../src/interview/draft.js';
import { isFault } from '../../src/interview/given-value.js';
import { answer, answersOf, change, startInterview, toldOf } from '../../src/interview/interview.js';
import { questionsFor } from '../../src/interview/questions/questions.js';
import { ABOUT_DEVIATION } from '../../src/records/shared/about-deviation.js';
import { UNITS } from '../../src/report/text/display-units.js';
import { give, recordsOf, shelf, walkTo } from '../support/interview/walk.js';

const NEW_BALL = { ball: 'new:symmetric' };

/** What is told after an answer. */
function told(id: string, given: string, answers: Record<string, unknown> = {}): string {
  const next = answer(walkTo(id as never, answers).interview, given);
  if (isFault(next)) throw new Error(next.rule);
  return toldOf(next, id as never).join(' ');
}

describe('what a person types at a question', () => {
  // biome-ignore format: one answer a line
  test.each([
    ['speedMph', '27,5 km/h', 'speedMph', 17.0877],
    ['speedMph', '27 kph', 'speedMph', 16.777],
    ['papOverIn', '5⅛', 'papOverIn', 5.125],
    ['papOverIn', "5 1/8''", 'papOverIn', 5.125],
    ['papOverIn', '5-1/8', 'papOverIn', 5.125],
    ['papUpIn', 'up 3/8', 'papUpIn', 0.375],
    ['papUpIn', '−1/4', 'papUpIn', -0.25],
    ['weightLb', '15#', 'weightLb', 15],
    ['weightLb', '15 lbs', 'weightLb', 15],
    ['weightLb', '6,8 kg', 'weightLb', 14.9914],
    ['surfaceGrit', '2,000', 'surfaceGrit', 2000],
  ] as const)('at %s %j is understood', (id, given, key, value) => {
    const { interview } = walkTo(id, NEW_BALL);
    const next = answer(interview, given);
    if (isFault(next)) throw new Error(next.rule);
    expect(answersOf(next)[key]).toBeCloseTo(value, 3);
  });

  test('a range and about so much become uncertainty, and it is told', () => {
    const unsure = { axisRotationDeg: '40-50', revRateRpm: '~325', papUpIn: '1/4-1/2 down' };
    expect(recordsOf(walkTo(null, unsure).interview).bowler).toMatchObject({
      axisRotationDeg: 45,
      revRateRpm: 325,
      pap: { upIn: -0.375 },
      uncertainty: { axisRotationDeg: 5, revRateRpm: ABOUT_DEVIATION.revRateRpm, papUpIn: 0.125 },
    });
    expect(told('axisRotationDeg', '40-50')).toBe('Taken as 45 degrees, give or take 5 degrees.');
    expect(told('speedMph', 'about 17')).toBe('Taken as 17.0 mph, give or take 0.6 mph.');
    expect(told('papOverIn', '5-1/8')).toBe('Taken as 5 1/8 in.');
    expect(told('papOverIn', '5 1/8')).toBe('');
  });

  test('an exact number given after a range is exact', () => {
    const { interview } = walkTo('axisTiltDeg', { revRateRpm: '300-340' });
    expect(answersOf(interview).deviations?.revRateRpm).toBe(20);
    const pap = { papOverIn: '5', papUpIn: '0' };
    const again = walkTo(null, pap, interview).interview;
    expect(recordsOf(again).bowler.uncertainty).toEqual({ revRateRpm: 20 });
    const changed = give(change(again, 'revRateRpm'), '320');
    expect(recordsOf(changed).bowler).not.toHaveProperty('uncertainty');
    const exact = walkTo(null, { ...pap, revRateRpm: '320' }).interview;
    expect(recordsOf(exact).bowler).not.toHaveProperty('uncertainty');
    expect(recordsOf(changed)).toEqual(recordsOf(exact));
  });

  // biome-ignore format: one answer a line
  test.each([
    ['weightLb', '14-15', 'no range'],
    ['papOverIn', '0-1/2', 'one number or a range'],
    ['axisRotationDeg', '4-1/2', 'lesser number'],
    ['speedMph', '17 lb', 'lb is no unit of a speed'],
    ['speedMph', '9-25', 'narrower range'],
  ] as const)('at %s %j is refused, and why', (id, given, hint) => {
    const fault = answer(walkTo(id, NEW_BALL).interview, given);
    expect(isFault(fault) && fault.hint).toContain(hint);
  });

  test.each(['12 up', 'up 12', '12 to 14', '~12', '12,5', '1/2 in up', '12 mm'])(
    'an interview left in millimetres after %j goes on in inches with the same number',
    (given) => {
      const metric = startInterview(questionsFor(shelf, UNITS.metric));
      const { interview } = walkTo(null, { papUpIn: given }, metric);
      const again = resumed(questionsFor(shelf), JSON.parse(JSON.stringify(draftOf(interview))));
      expect(answersOf(again).papUpIn).toBeCloseTo(answersOf(interview).papUpIn as number, 12);
      expect(answersOf(again).deviations?.papUpIn).toBe(answersOf(interview).deviations?.papUpIn);
    },
  );
});

test('a wish may be a number of one’s own, in the units of the questions', () => {
  const wishes = {
    hookStart: 'number',
    hookStartNumber: '41 ft',
    totalHook: 'number',
    totalHookNumber: '22',
    sharpness: 4,
  };
  expect(recordsOf(walkTo(null, wishes).interview).want).toEqual({
    hookStart: '41 ft',
    sharpness: 4,
    totalHook: '22 boards',
  });
  const metric = startInterview(questionsFor(shelf, UNITS.metric));
  const { want } = recordsOf(
    walkTo(null, { hookStart: 'number', hookStartNumber: '12.192' }, metric).interview,
  );
  expect(want).toEqual({ hookStart: '40 ft' });
});

test.each(['trade', 'metric'] as const)(
  'in %s units help and fault of a number name the same range',
  (system) => {
    const range = /(-?\d+(?:\.\d+)?) to (-?\d+(?:\.\d+)?)/;
    const told = questionsFor(shelf, UNITS[system]).flatMap((question) => {
      const isTold = question.kind === 'number' && !question.id.endsWith('UpIn'); // from up to down
      const ends = isTold ? range.exec(question.help)?.[0] : undefined;
      return isTold && ends !== undefined ? [{ ends, question }] : [];
    });
    expect(told.length).toBeGreaterThan(15);
    for (const { ends, question } of told)
      expect(question.schema.safeParse(1e9).error?.issues[0]?.message, question.id).toContain(
        `must be ${ends}`,
      );
  },
);
