import { beforeAll, describe, expect, test } from 'vitest';
import { judge } from '../../src/answer/judge.js';
import { recommend } from '../../src/answer/recommend.js';
import { rollAnswer } from '../../src/answer/roll-answer.js';
import { numbersOf } from '../../src/prepare/mark-of.js';
import type { JudgeAnswer, RecommendAnswer } from '../../src/records/answers/answer.js';
import { judgeAnswerSchema } from '../../src/records/answers/judge-answer.js';
import { withSentences } from '../../src/report/wording/with-sentences.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';
import { said } from '../support/said.js';
import { SMALL_BUDGET } from '../support/small-budget.js';

const options = { seed: 1, workers: 1, top: 2, pinSide: 'above' as const, budget: SMALL_BUDGET };
const inputs = {
  bowler: averageBowler,
  ball: plainBall,
  lane: houseLane,
  want: { hookStart: 5, totalHook: 4 },
};

describe('judge', () => {
  let recommended: RecommendAnswer;
  let best: JudgeAnswer;
  let poor: JudgeAnswer;
  let barred: JudgeAnswer;
  beforeAll(async () => {
    recommended = await recommend(inputs, options);
    best = await judge({ ...inputs, layout: numbersOf(recommended.layouts[0]) }, options);
    poor = await judge(
      { ...inputs, layout: { drillingAngleDeg: 10, pinToPapIn: 3.375, valAngleDeg: 50 } },
      options,
    );
    barred = await judge(
      { ...inputs, layout: { drillingAngleDeg: 50, pinToPapIn: 4.5, valAngleDeg: 110 } },
      options,
    );
  });

  test('keeps its schema; targets and score of a layout are those of the recommendation', () => {
    expect(judgeAnswerSchema.parse(withSentences(best))).toEqual(withSentences(best));
    expect(best.targets).toEqual(recommended.targets);
    expect(best.layout.score).toBe(recommended.layouts[0].score);
    expect(best.layout.reaction).toEqual(recommended.layouts[0].reaction);
  });

  test('the best layout is the one that is recommended, whichever is judged: on the marking grid, off it, or barred', () => {
    for (const judged of [best, poor, barred]) {
      expect(judged.best.text).toBe(recommended.layouts[0].text);
      expect(judged.best.score).toBe(recommended.layouts[0].score);
    }
  });

  test('the recommended layout is about as good as any, one that misses the wish is not', () => {
    expect(best.verdict).toBe('as-good');
    expect(best.place.betterThan / best.place.of).toBeGreaterThan(0.9);
    expect(poor.layout.score).toBeLessThan(best.layout.score);
    expect(poor.confidence.bestBeatsIt).toBeGreaterThan(0.7);
    expect(['probably-worse', 'clearly-worse']).toContain(poor.verdict);
    expect(poor.place.betterThan).toBeLessThan(best.place.betterThan);
  });

  test('a layout whose rings run over a hole is not allowed, and `roll` says the same of it', () => {
    expect(barred.verdict).toBe('not-allowed');
    expect(said(barred.layout.objections)).toMatch(/ring/);
    const layout = { drillingAngleDeg: 50, pinToPapIn: 4.5, valAngleDeg: 110 };
    expect(said(rollAnswer({ ...inputs, layout }).objections)).toMatch(/ring/);
  });

  test('shares lead from this layout to the best one, and every marking error is told', () => {
    const { score } = poor.shares;
    expect(score.drillingAngle + score.pinToPap + score.valAngle).toBeCloseTo(score.total, 9);
    expect(score.total).toBeCloseTo(poor.best.nominalScore - poor.layout.nominalScore, 9);
    expect(poor.causes!.score.total).toBeCloseTo(score.total, 9);
    expect(poor.marking.map(({ error }) => error)).toEqual([
      { code: 'pin-to-pap-off', params: { byIn: 1 / 16 } },
      { code: 'drilling-angle-off', params: { byDeg: 2 } },
      { code: 'val-angle-off', params: { byDeg: 2 } },
    ]);
    // the worse side of an error never scores above the layout by more than both sides could
    for (const { score: change } of best.marking) expect(change).toBeLessThanOrEqual(1);
  });
});
