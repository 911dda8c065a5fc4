import { describe, expect, test } from 'vitest';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { nominalShots } from '../../src/search/candidates/nominal-shots.js';
import type { Evaluator } from '../../src/simulate/evaluator.js';
import { type Setting, withSetting } from '../../src/simulate/setting.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';
import { SMALL_BUDGET } from '../support/small-budget.js';

const inputs = { bowler: averageBowler, ball: plainBall, lane: houseLane, want: {} };
const options = { seed: 1, workers: 1, pinSide: 'above' as const, budget: SMALL_BUDGET };

const USUAL = MIDDLE_LAYOUT;
const BESIDE = { ...MIDDLE_LAYOUT, drillingAngleDeg: MIDDLE_LAYOUT.drillingAngleDeg + 10 };
const LATER = { ...MIDDLE_LAYOUT, drillingAngleDeg: MIDDLE_LAYOUT.drillingAngleDeg + 20 };

/** A setting that counts the trials it is asked for. */
function counting(setting: Setting): { setting: Setting; trials: () => number } {
  let count = 0;
  const evaluator: Evaluator = {
    evaluate(trials, onDone) {
      count += trials.length;
      return setting.evaluator.evaluate(trials, onDone);
    },
  };
  return { setting: { ...setting, evaluator }, trials: () => count };
}

describe('nominalShots that go on apart', () => {
  test('see what was rolled before they parted, not what the other rolls after, and nothing is rolled twice', () =>
    withSetting(inputs, options, async (given) => {
      const { setting, trials } = counting(given);
      const shots = nominalShots(setting);
      await shots.roll([USUAL]);
      const [one, other] = [shots.apart(), shots.apart()];
      await Promise.all([one.roll([BESIDE, LATER]), other.roll([LATER])]);
      expect(trials()).toBe(3);
      const seen = (view: typeof one) => [USUAL, BESIDE, LATER].map((layout) => view.get(layout)?.layout);
      expect(seen(shots)).toEqual([USUAL, undefined, undefined]);
      expect(seen(one)).toEqual([USUAL, BESIDE, LATER]);
      expect(seen(other)).toEqual([USUAL, undefined, LATER]);
      expect(other.get(LATER)).toBe(one.get(LATER));
      expect([shots, one, other].map((view) => view.shots())).toEqual([3, 3, 3]);
    }));
});
