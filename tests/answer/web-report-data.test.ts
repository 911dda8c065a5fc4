import { expect, test } from 'vitest';
import { drilledAnswer } from '../../src/answer/drilled-answer.js';
import { webReportData } from '../../src/answer/web-report-data.js';
import { parseLayout } from '../../src/records/text/layout-text.js';
import { twentiethsOf } from '../../src/search/scoring/world-statistics.js';
import { averageBowler, plainBall } from '../support/problems.js';

const inputs = { bowler: averageBowler, ball: plainBall };
const layout = { ...parseLayout('70 x 4 1/2 x 30') };
const answered = drilledAnswer({ ...inputs, layout }, { ounce: 'moment' });
const facts = webReportData(inputs, { ...layout, psa: answered.psa });
const map = facts.map!;

test('webReportData: the face is that of the drilled ball', () => {
  expect(facts.face).toEqual(answered.face);
});

test('webReportData: a point of the map is what `drilled` says of that layout, to the last digit', () => {
  const { drillingAnglesDeg, pinToPapsIn, rows, valAngleDeg } = map;
  expect(valAngleDeg).toBe(30);
  expect(rows.map((row) => row.length)).toEqual(pinToPapsIn.map(() => drillingAnglesDeg.length));
  for (const [i, j] of [
    [0, 0],
    [5, 3],
    [pinToPapsIn.length - 1, drillingAnglesDeg.length - 1],
  ] as const) {
    const there = { drillingAngleDeg: drillingAnglesDeg[j]!, pinToPapIn: pinToPapsIn[i]!, valAngleDeg };
    const { rgIn, differentialIn, intermediateDifferentialIn } = drilledAnswer(
      { ...inputs, layout: there },
      { ounce: 'moment' },
    ).drilled;
    expect(rows[i]![j]).toEqual({ rgIn, differentialIn, intermediateDifferentialIn });
  }
});

test('webReportData: the map spans what the trade drills', () => {
  const { drillingAnglesDeg, pinToPapsIn } = map;
  expect([drillingAnglesDeg[0], drillingAnglesDeg.at(-1)]).toEqual([10, 90]);
  expect([pinToPapsIn[0], pinToPapsIn.at(-1)]).toEqual([2, 6]);
});

test('twentiethsOf: of evenly spread values they are evenly spread, each in the middle of a twentieth', () => {
  const shuffled = Array.from({ length: 200 }, (_, i) => (i * 83) % 200); // 0 to 199, out of order
  const got = twentiethsOf(shuffled);
  expect(got).toHaveLength(20);
  // 200 values make ten to a twentieth: its middle lies between the fifth and the sixth of them
  got.forEach((value, k) => {
    expect(value).toBeGreaterThanOrEqual(10 * k + 4);
    expect(value).toBeLessThanOrEqual(10 * k + 5);
  });
});
