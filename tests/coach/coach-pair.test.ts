import { standardDeviation } from 'simple-statistics';
import { beforeAll, describe, expect, test } from 'vitest';
import { recommend } from '../../src/answer/recommend.js';
import { USUAL_TOP } from '../../src/base/search-limits.js';
import { coachPair } from '../../src/coach/coach-pair.js';
import type { RecommendAnswer } from '../../src/records/answers/answer.js';
import { type CoachPair, coachPairSchema } from '../../src/records/answers/coach-answer.js';
import { overScatter } from '../../src/records/answers/parts/over-scatter.js';
import type { PublishedBall } from '../../src/records/schemas/ball.js';
import { COMPARED_IDS, WISHED_IDS } from '../../src/records/schemas/reaction-numbers.js';
import { withSentences } from '../../src/report/wording/with-sentences.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';
import { SMALL_BUDGET } from '../support/small-budget.js';

/** As a person would ask: practice weighs as usual, and as many layouts are listed as usual. */
const given = { seed: 1, budget: SMALL_BUDGET };
const inputs = {
  bowler: { ...averageBowler, uncertainty: { papOverIn: 0.4, papUpIn: 0 } },
  ball: { ...(plainBall as PublishedBall), uncertainty: { rgIn: 0.02, topWeightOz: 0 } },
  lane: houseLane,
  want: { totalHook: 4 },
};

describe('coachPair', () => {
  let pair: CoachPair;
  let answer: RecommendAnswer;
  beforeAll(async () => {
    pair = await coachPair(inputs, [], given);
    answer = await recommend(inputs, { ...given, workers: 1, pinSide: 'above', top: USUAL_TOP });
  });

  test('keeps its schema, and says how far off the numbers of the release and the ball are that are not known exactly', () => {
    expect(coachPairSchema.parse(withSentences(pair))).toEqual(withSentences(pair));
    expect(pair.unsure).toEqual({ papOverIn: 0.4, rgIn: 0.02 });
  });

  test('best layout, its gain over the usual, scatter and levers are those of a recommendation', () => {
    const [best] = answer.layouts;
    expect(pair.best.layout).toBe(best.text);
    expect(pair.overMiddle).toEqual(best.confidence.overMiddle);
    expect(pair.best.beatsMiddle).toBe(best.confidence.beatsMiddle);
    expect(pair.scatter).toEqual(answer.scatter);
    expect(pair.levers).toEqual(answer.levers);
    expect(pair.targets).toEqual(answer.targets);
  });

  test('standard deviations are those of the answer’s twentieths, as nearly as twenty values have them', () => {
    const [best] = answer.layouts;
    const ratios = [
      ...COMPARED_IDS.map((id) => pair.best.deviations[id] / standardDeviation(best.twentieths[id])),
      ...WISHED_IDS.map(
        (id) => pair.overMiddleDeviations![id] / standardDeviation(best.confidence.paired![id]),
      ),
    ];
    for (const ratio of ratios) expect(Math.abs(ratio - 1)).toBeLessThan(0.15);
  });

  test('the layout does most only where no lever of the recommendation moves the wished number farther', () => {
    const [best] = answer.layouts;
    const ids = ['totalHookBoards'] as const;
    const layout = overScatter(pair.overMiddle!.weighed.size, pair.scatter, ids);
    const lever = Math.max(
      ...answer.levers.map(({ reaction }) =>
        overScatter(
          { totalHookBoards: reaction.totalHookBoards - best.reaction.totalHookBoards },
          answer.scatter,
          ids,
        ),
      ),
    );
    expect(lever).toBeGreaterThan(layout); // as anybody in the trade would say of a cover
    expect(['surface', 'line']).toContain(pair.advice);
    expect(pair.says.params.ways[0].overScatter).toBeCloseTo(lever, 9);
  });
});
