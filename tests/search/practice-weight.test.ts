import { beforeAll, describe, expect, test } from 'vitest';
import { recommend } from '../../src/answer/recommend.js';
import type { RecommendAnswer } from '../../src/records/answers/answer.js';
import { demoShelf } from '../../src/records/read/shelf.js';
import { TINY_BUDGET } from '../support/small-budget.js';

const { bowlers, balls, lanes } = demoShelf();
const byId = <T>(list: readonly { id: string; record: T }[], id: string): T =>
  list.find((each) => each.id === id)!.record;

const CASES = [
  { bowler: 'average-right', ball: 'plain-medium', lane: 'house-easy', want: { hookStart: 4, sharpness: 4 } },
  { bowler: 'average-left', ball: 'asymmetric-mild', lane: 'league-night', want: { totalHook: 5 } },
  { bowler: 'two-handed', ball: 'lobed-medium', lane: 'house-easy', want: { hookStart: 2 } },
  { bowler: 'high-tilt', ball: 'asymmetric-strong', lane: 'long', want: { totalHook: 5, sharpness: 2 } },
] as const;

describe.each(CASES)('$bowler with $ball on $lane', ({ bowler, ball, lane, want }) => {
  const inputs = {
    bowler: byId(bowlers, bowler),
    ball: byId(balls, ball),
    lane: byId(lanes, lane),
    want,
  };
  const options = { seed: 1, top: 2, workers: 1, pinSide: 'above' as const, budget: TINY_BUDGET };
  let physics: RecommendAnswer;
  let weighed: RecommendAnswer;
  beforeAll(async () => {
    physics = await recommend(inputs, { ...options, practiceWeight: 0 });
    weighed = await recommend(inputs, { ...options, practiceWeight: 0.5 });
  });

  test('physics chooses the same, with the same scores, whether or not practice is heard', () => {
    const [first] = physics.layouts;
    expect(weighed.voices!.physics.text).toBe(first.text);
    expect(weighed.voices!.physics.scores.physics).toBe(first.score);
  });
});
