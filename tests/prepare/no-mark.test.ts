import { beforeAll, describe, expect, test } from 'vitest';
import { drilledAnswer } from '../../src/answer/drilled-answer.js';
import { judge } from '../../src/answer/judge.js';
import { mapAnswer } from '../../src/answer/map/map-answer.js';
import { recommend } from '../../src/answer/recommend.js';
import { sheetAnswer } from '../../src/answer/sheet-answer.js';
import { webReportData } from '../../src/answer/web-report-data.js';
import { ballProblem } from '../../src/prepare/ball-problem.js';
import { layoutOnBall } from '../../src/prepare/layout-on-ball.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import type { RecommendAnswer } from '../../src/records/answers/answer.js';
import { drilledAnswerSchema } from '../../src/records/answers/drilled-answer.js';
import { recommendAnswerSchema } from '../../src/records/answers/recommend-answer.js';
import { sheetAnswerSchema } from '../../src/records/answers/sheet-answer.js';
import type { Ball } from '../../src/records/schemas/ball.js';
import { readLayout } from '../../src/records/text/written-layout.js';
import { drilledReport } from '../../src/report/screens/drilled-report.js';
import { mapReport } from '../../src/report/screens/map-report.js';
import { recommendationReport } from '../../src/report/screens/recommendation-report.js';
import { sheetText } from '../../src/report/sheet/sheet-blocks.js';
import { UNITS } from '../../src/report/text/display-units.js';
import { withSentences } from '../../src/report/wording/with-sentences.js';
import { pageOf } from '../support/page.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';
import { refusalOf } from '../support/refusal-of.js';
import { said } from '../support/said.js';
import { SMALL_BUDGET } from '../support/small-budget.js';

/* A symmetric ball whose CG lies on its pin: nothing on it shows a direction. */
const ball = { ...plainBall, pinToCgIn: 0 } as Ball;
const lobed = { ...ball, coreShape: 'lobed' } as Ball;
const on = (text: string, on = ball) => layoutOnBall(readLayout(text), on);
const drilled = (text: string, of = ball) =>
  drilledAnswer({ bowler: averageBowler, ball: of, layout: on(text, of) }, { ounce: 'moment' });

const SAID = /no mark to aim at and no drilling angle/;

describe('a ball without a mark', () => {
  test('any drilling angle is taken and none is kept; drilled says so', () => {
    const answer = drilled('70 x 4 1/2 x 30');
    expect(drilledAnswerSchema.parse(withSentences(answer))).toEqual(withSentences(answer));
    expect(answer).toEqual(drilled('15 x 4 1/2 x 30'));
    expect(answer.layout).toMatchObject({
      text: 'pin 4 1/2 x VAL 30',
      drillingAngleDeg: null,
      markerToPapIn: null,
    });
    expect(answer.marks.map(({ mark }) => mark)).not.toContain('CG mark');
    expect(said(answer.assumptions)).toMatch(SAID);
    const screen = drilledReport(answer, pageOf(80)).replace(/\s+/g, ' ');
    expect(screen).toContain('No drilling angle, pin 4 1/2 in from the PAP, VAL angle 30°');
    expect(screen).not.toMatch(/Drilling angle \d/);
  });

  test('distances give the pin’s place, whatever the arc to the mark', () => {
    const layout = on('4 1/2 x 4 1/2 x 2');
    expect(layout.pinToPapIn).toBe(4.5);
    // sin(buffer) = sin(pin-to-PAP) sin(VAL angle): Todhunter & Leathem, art. 62
    const arc = (inches: number): number => (2 * Math.PI * inches) / 27;
    expect(layout.valAngleDeg).toBeCloseTo(
      (Math.asin(Math.sin(arc(2)) / Math.sin(arc(4.5))) * 180) / Math.PI,
      9,
    );
    // 4 in and 2 in of 27 in around
    expect(refusalOf(() => on('2 x 2 x 4')).worded.message).toContain(
      'the pin buffer (53.3°) exceeds pin-to-PAP (26.7°)',
    );
  });

  test('an angle to a mass-bias mark is refused', () => {
    expect(refusalOf(() => on('70 mb x 4 1/2 x 30')).worded.message).toContain('has no mass-bias mark');
  });

  test('a map over drilling angles is refused, one over pin-to-PAP says nothing of a drilling angle', () => {
    const inputs = { bowler: averageBowler, ball, around: MIDDLE_LAYOUT };
    expect(refusalOf(() => mapAnswer(inputs, 'drilling-angle')).worded.message).toMatch(SAID);
    const answer = mapAnswer(inputs, 'pin-to-pap');
    expect(answer.rows.every(({ layout }) => layout.drillingAngleDeg === null)).toBe(true);
    const head = mapReport(answer, pageOf(80)).split('Assumed')[0] as string;
    expect(head.replace(/\s+/g, ' ')).toContain('no drilling angle, VAL angle 35°');
    expect(
      webReportData({ bowler: averageBowler, ball }, { ...answer.rows[0]!.layout, psa: answer.rows[0]!.psa })
        .map,
    ).toBeNull();
  });

  test('the sheet lays off pin and grip without a mark, and reads no drilling angle back', async () => {
    const answer = await sheetAnswer(
      { bowler: averageBowler, ball, lane: null, layout: on('70 x 4 1/2 x 30') },
      { date: '2026-03-01', seed: 1, ounce: 'moment' },
    );
    expect(sheetAnswerSchema.parse(withSentences(answer))).toEqual(withSentences(answer));
    expect(answer.marking.given).toEqual(['pin']);
    expect(answer.marking.readBack.drillingAngleDeg).toBeNull();
    const words = JSON.stringify(sheetText(answer, UNITS.trade));
    expect(words).toContain('any direction');
    expect(words).not.toMatch(/drilling angle -?\d|CG mark to PAP/);
    expect(said(answer.assumptions)).toMatch(SAID);
  });

  test('a lobed core may then stand any way: its band spans what drilling angles do to one with a mark', () => {
    const withMark = { ...lobed, pinToCgIn: 0.1 } as Ball;
    const spread = ({ bands }: ReturnType<typeof drilled>): number =>
      bands.intermediateDifferentialIn.high - bands.intermediateDifferentialIn.low;
    const [small, large] = [30, 70].map((angle) => drilled(`${angle} x 4 1/2 x 35`, withMark));
    const any = drilled('50 x 4 1/2 x 35', lobed);
    expect(spread(any)).toBeGreaterThan(Math.max(spread(small!), spread(large!)));
    expect(said(any.assumptions)).toMatch(/turned every way/);
    const { bodies } = ballProblem(lobed, averageBowler, 'moment');
    // 64 directions of the first nose, none nearer to another than half of an even spread
    const turns = bodies.map(({ core }) => Math.atan2(core[1]!.c[1], core[1]!.c[0])).sort((a, b) => a - b);
    for (let i = 1; i < turns.length; i++)
      expect(turns[i]! - turns[i - 1]!).toBeGreaterThan(Math.PI / 64 / 2);
  });
});

describe('recommend and judge on a ball without a mark', () => {
  const inputs = { bowler: averageBowler, ball, lane: houseLane, want: { totalHook: 4 as const } };
  const options = { seed: 1, workers: 1, top: 2, pinSide: 'above' as const, budget: SMALL_BUDGET };
  let answer: RecommendAnswer;
  beforeAll(async () => {
    answer = await recommend(inputs, { ...options, top: 3 });
  });

  test('layouts differ by where the pin lies alone, and nothing is said of a drilling angle', () => {
    expect(recommendAnswerSchema.parse(withSentences(answer))).toEqual(withSentences(answer));
    const texts = [answer.middle, ...answer.layouts].map(({ text }) => text);
    for (const text of texts) expect(text).toMatch(/^pin .* x VAL \d+$/);
    expect(new Set(answer.layouts.map(({ text }) => text)).size).toBe(answer.layouts.length);
    for (const { steps, shares } of answer.layouts) {
      expect(said(steps.map(({ change }) => change))).not.toMatch(/drilling/);
      expect(shares.score.drillingAngle).toBeCloseTo(0, 9);
    }
    expect(said(answer.beliefs)).not.toMatch(/drilling angle|mark/);
    expect(said(answer.assumptions)).toMatch(SAID);
    expect(recommendationReport(answer, pageOf(80))).not.toMatch(/[Dd]rilling angle \d/);
  });

  test('judge leaves out what a wrong drilling angle would cost', async () => {
    const judged = await judge({ ...inputs, layout: on('20 x 4 x 40') }, options);
    expect(judged.layout.text).toBe('pin 4 x VAL 40');
    expect(said(judged.marking.map(({ error }) => error))).not.toMatch(/drilling/);
    expect(said(judged.assumptions)).toMatch(SAID);
  });
});
