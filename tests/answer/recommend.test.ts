import { beforeAll, describe, expect, test } from 'vitest';
import { recommend } from '../../src/answer/recommend.js';
import { rollAnswer } from '../../src/answer/roll-answer.js';
import { USUAL_TOP } from '../../src/base/search-limits.js';
import { USUAL_BUDGET } from '../../src/prepare/budget.js';
import type { RecommendAnswer } from '../../src/records/answers/answer.js';
import { recommendAnswerSchema } from '../../src/records/answers/recommend-answer.js';
import { Refusal } from '../../src/records/refusals/refusal.js';
import { SHARED_IDS } from '../../src/records/schemas/reaction-numbers.js';
import { UNITS } from '../../src/report/text/display-units.js';
import { formatRefusal } from '../../src/report/wording/refusals/word-refusal.js';
import { withSentences } from '../../src/report/wording/with-sentences.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';
import { demoAnswer } from '../support/shared-answer.js';
import { SMALL_BUDGET } from '../support/small-budget.js';

/** For what holds whatever is tried; what takes the usual numbers looks at the demo's whole answer. */
const options = { seed: 1, top: 3, workers: 1, pinSide: 'above' as const, budget: SMALL_BUDGET };
const inputs = {
  bowler: averageBowler,
  ball: plainBall,
  lane: houseLane,
  want: { hookStart: 5, totalHook: 4 },
};

describe('recommend', () => {
  let answer: RecommendAnswer;
  let whole: RecommendAnswer;
  beforeAll(async () => {
    answer = await recommend(inputs, options);
    whole = JSON.parse((await demoAnswer()).out);
  });

  test('the answer keeps the contract of its schema', () => {
    expect(recommendAnswerSchema.parse(withSentences(answer))).toEqual(withSentences(answer));
  });

  test('the same seed gives the same answer, byte for byte', async () => {
    expect(JSON.stringify(await recommend(inputs, options))).toBe(JSON.stringify(answer));
  });

  test('the regression tries all layouts, and its scores of those listed stand beside physics’', () => {
    const { regression, candidates } = whole.search;
    expect(regression.notice).toBe(null);
    expect(regression.arithmetic).toBe('runtime');
    // most candidates may be marked; those that may meet the worlds of the first round, the better ones more
    const [first] = USUAL_BUDGET.survey.rounds;
    expect(regression.candidateWorlds).toBeGreaterThan(0.9 * first.worlds * candidates);
    expect(regression.listed.length).toBeGreaterThan(0);
    for (const { layout, byRegression, byPhysics } of regression.listed) {
      expect(byPhysics).toBe(whole.layouts.find(({ text }) => text === layout)?.score);
      expect(Math.abs(byRegression - byPhysics)).toBeLessThanOrEqual(regression.difference!.worst);
    }
    expect(regression.difference!.worst).toBeLessThan(10); // a tenth of the scale
  });

  test('another seed changes the luck, not the ball; without a regression physics answers alone and says so', async () => {
    const other = await recommend(inputs, { ...options, seed: 2, models: 'no-such-folder' });
    expect(other.search.regression).toMatchObject({
      notice: { code: 'regression-missing', params: {} },
      arithmetic: null,
      candidateWorlds: 0,
      listed: [],
    });
    expect(recommendAnswerSchema.parse(withSentences(other))).toEqual(withSentences(other));
    expect(other.targets).toEqual(answer.targets);
    expect(other.middle.drilled).toEqual(answer.middle.drilled);
    expect(other.middle.bands.score).not.toEqual(answer.middle.bands.score);
  });

  test.each(['small', 'usual'])(
    '%s budget: layouts are ranked by score but where they tie, differ from one another, and are allowed',
    (budget) => {
      const { layouts } = budget === 'small' ? answer : whole;
      expect(layouts).toHaveLength(budget === 'small' ? options.top : USUAL_TOP);
      layouts.forEach((layout, i) => {
        expect(layout.rank).toBe(i + 1);
        const before = layouts[i - 1];
        // a higher score stands behind only where a game would not show the difference, or for a layout that is behind the usual
        if (before && layout.score > before.score) {
          const { overRunnerUp, beatsRunnerUp } = before.confidence;
          expect(
            overRunnerUp!.weighed.visibility !== 'seen' || layout.confidence.beatsMiddle < 0.5,
            `${before.text} before ${layout.text}, ahead in ${beatsRunnerUp}`,
          ).toBe(true);
        }
        expect(layout.legality.legal).toBe(true);
        expect(layout.reaction.outcome).toBe('pins');
        expect(layout.reaction.ringClearanceIn).toBeGreaterThanOrEqual(0.125);
        for (const other of layouts.slice(0, i))
          expect(
            Math.abs(other.pinToPapIn - layout.pinToPapIn) / 0.75 +
              Math.abs(other.drillingAngleDeg! - layout.drillingAngleDeg!) / 25 +
              Math.abs(other.valAngleDeg - layout.valAngleDeg) / 15,
          ).toBeGreaterThanOrEqual(1);
      });
    },
  );

  test('the best layout scores above the usual middle one in the mean, and its confidence says how often', () => {
    const [best] = whole.layouts;
    expect(best.score).toBeGreaterThan(whole.middle.score);
    expect(best.confidence.beatsMiddle).toBeGreaterThan(0.5);
    for (const { layouts } of [answer, whole]) {
      expect(layouts[0].confidence.beatsMiddle).toBeGreaterThanOrEqual(0.5);
      expect(layouts[0].confidence.beatsRunnerUp).toBeGreaterThanOrEqual(0.5);
    }
    expect(best.confidence.worlds).toBe(USUAL_BUDGET.worlds);
    expect(answer.layouts[0].confidence.worlds).toBe(SMALL_BUDGET.worlds);
  });

  test('shares of the three numbers add up to the difference from the usual middle layout', () => {
    for (const { layouts, middle } of [answer, whole])
      for (const { shares, reaction, drilled } of layouts) {
        for (const share of Object.values(shares))
          expect(share.drillingAngle + share.pinToPap + share.valAngle).toBeCloseTo(share.total, 9);
        expect(shares.flareIn.total).toBeCloseTo(reaction.flareIn - middle.reaction.flareIn, 9);
        for (const key of ['differentialIn', 'intermediateDifferentialIn'] as const)
          expect(shares[key].total).toBeCloseTo(drilled[key] - middle.drilled[key], 9);
      }
  });

  test('causes add up to the same differences, in this thread and in workers', () => {
    for (const { layouts } of [answer, whole])
      for (const { shares, causes } of layouts)
        for (const id of ['score', ...SHARED_IDS] as const) {
          const { total, centre, flare, inertia } = causes![id];
          expect(total).toBeCloseTo(shares[id].total, 9);
          expect(centre + flare + inertia).toBeCloseTo(total, 9);
        }
  });

  test('a left-hander on the mirrored lane gets the same answer to the last digit', async () => {
    const mirrored = {
      ...houseLane,
      zones: houseLane.zones.map((zone) => ({
        ...zone,
        fromBoard: 39 - zone.toBoard,
        toBoard: 39 - zone.fromBoard,
      })),
    };
    const left = await recommend(
      { ...inputs, bowler: { ...averageBowler, hand: 'left' }, lane: mirrored },
      options,
    );
    expect({ ...left, inputs: null }).toEqual({ ...answer, inputs: null });
  });

  test('a lopsided lane tells right from left', () => {
    const lopsided = {
      ...houseLane,
      zones: [...houseLane.zones, { fromFt: 0, toFt: 38, fromBoard: 30, toBoard: 39, units: 60 }],
    };
    const layout = { drillingAngleDeg: 50, pinToPapIn: 4.5, valAngleDeg: 45 };
    const roll = (hand: 'left' | 'right') =>
      rollAnswer({ bowler: { ...averageBowler, hand }, ball: plainBall, lane: lopsided, layout }).reaction;
    expect(roll('left').totalHookBoards).not.toBeCloseTo(roll('right').totalHookBoards, 1);
  });
});

test('recommend: a ball whose numbers fit no core is refused, with the nearest numbers that work', async () => {
  const impossible = { ...plainBall, weightLb: 14, rgIn: 2.4, differentialIn: 0.03 };
  const refusal = await recommend({ ...inputs, ball: impossible }, options).catch((error: unknown) => error);
  expect(refusal).toBeInstanceOf(Refusal);
  expect(formatRefusal(refusal as Refusal, UNITS.trade).message).toMatch(/Nearest that works.*RG/);
});
