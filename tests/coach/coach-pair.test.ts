import { beforeAll, describe, expect, test } from 'vitest';
import { recommend } from '../../src/answer/recommend.js';
import { coachPair } from '../../src/coach/coach-pair.js';
import type { RecommendAnswer } from '../../src/records/answers/answer.js';
import { type CoachPair, coachPairSchema } from '../../src/records/answers/coach-answer.js';
import { overScatter } from '../../src/records/answers/parts/over-scatter.js';
import type { PublishedBall } from '../../src/records/schemas/ball.js';
import { withSentences } from '../../src/report/wording/with-sentences.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';
import { SMALL_BUDGET } from '../support/small-budget.js';

/** Physics alone, so that a coach's search, which leaves out what each voice would choose, is the same one. */
const given = { seed: 1, practiceWeight: 0, budget: SMALL_BUDGET };
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
    answer = await recommend(inputs, { ...given, workers: 1, pinSide: 'above', top: 1 });
  });

  test('keeps its schema, and says which numbers of the release and the ball are not known exactly', () => {
    expect(coachPairSchema.parse(withSentences(pair))).toEqual(withSentences(pair));
    expect(pair.unsure).toEqual(['papOverIn', 'rgIn']);
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
