import { describe, expect, test } from 'vitest';
import { BELIEFS } from '../../src/records/shared/beliefs.js';
import { pairedScores, physicalTargets, type RolledOnce } from '../../src/search/paired-scores.js';
import { targetsOf } from '../../src/search/scoring/target.js';
import { scoredOutcomes, shiftTargets } from '../../src/search/scoring/world-statistics.js';
import { believedOutcome, believedReached } from '../../src/search/voices/weighed-voice.js';
import { outcomeOf } from '../support/outcomes.js';

const want = { hookStart: 5, totalHook: '12 boards' } as const;
const effects = (size: number): Float64Array => Float64Array.from(BELIEFS, () => size);
const attained: RolledOnce[] = [35, 37, 38, 40, 41].map((hookStartFt, i) => ({
  nominal: outcomeOf({ hookStartFt, totalHookBoards: 9 + i }),
  effects: effects(0.1 * i),
}));
const usual = outcomeOf({ hookStartFt: 38 });
const luck = [0.5, -1, 2, 0].map((by) => outcomeOf({ hookStartFt: 38 + by, totalHookBoards: 12 - by }));
const outcomes = [39, 37, 40, 38].map((hookStartFt) => outcomeOf({ hookStartFt, totalHookBoards: 11 }));
const rolled = { nominal: usual, effects: effects(0.4), outcomes };
const field = { attained, usual, luck };

describe('pairedScores', () => {
  test('by physics alone aims for what all attain, moved along with the luck of each world', () => {
    const targets = targetsOf(
      want,
      attained.map(({ nominal }) => nominal),
    );
    expect(targets).toHaveLength(2);
    expect(physicalTargets(want, attained)).toEqual(targets);
    const aimed = luck.map((here) => shiftTargets(targets, here, usual));
    expect(pairedScores(want, field, null)(rolled)).toEqual(scoredOutcomes(outcomes, aimed));
    // what luck does to the usual ball is no merit: a ball as lucky in every world scores evenly
    const { scores } = pairedScores(want, field, null)({ ...rolled, outcomes: luck });
    for (const score of scores) expect(score).toBeCloseTo(scores[3]!, 10);
  });

  test('with practice aims, world by world, for what all attain by the beliefs that hold there', () => {
    const sizes = luck.map((_, world) => BELIEFS.map((_belief, b) => (b === world ? 1 : 0)));
    const aimed = luck.map((here, world) =>
      shiftTargets(
        targetsOf(
          want,
          attained.map(({ nominal, effects }) => believedReached(nominal, effects, sizes[world])),
        ),
        here,
        usual,
      ),
    );
    const believed = outcomes.map((outcome, world) => believedOutcome(outcome, rolled.effects, sizes[world]));
    expect(believed).not.toEqual(outcomes);
    expect(pairedScores(want, field, sizes)(rolled)).toEqual(scoredOutcomes(believed, aimed));
  });

  test('aims for nothing where no layout may be drilled', () => {
    expect(physicalTargets(want, [])).toEqual([]);
    const { scores } = pairedScores(want, { ...field, attained: [] }, null)(rolled);
    expect(scores).toEqual([100, 100, 100, 100]); // all enter at 5°
  });
});
