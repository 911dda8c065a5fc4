import { mean } from 'simple-statistics';
import { beforeAll, describe, expect, test } from 'vitest';
import { oneMoreStep } from '../../src/explain/one-more-step.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import type { StepEffect } from '../../src/records/answers/answer.js';
import type { LayoutNumbers } from '../../src/records/text/layout-text.js';
import { objections } from '../../src/search/candidates/constraints.js';
import { cacheOutcomes, type ScoredCache } from '../../src/search/outcome-cache.js';
import type { Target } from '../../src/search/scoring/target.js';
import { simulateLayouts } from '../../src/search/simulate-layouts.js';
import { physicsVoice } from '../../src/search/voices/physics-voice.js';
import { reader } from '../../src/simulate/readings.js';
import { type Setting, withSetting } from '../../src/simulate/setting.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';
import { SMALL_BUDGET } from '../support/small-budget.js';

const inputs = { bowler: averageBowler, ball: plainBall, lane: houseLane, want: { hookStart: 5 } };
const target: Target = { wish: 'hookStart', step: 5, value: 13, low: 11, high: 13 };

/** What a step's code and size make of a layout. */
function stepped(layout: LayoutNumbers, { change }: StepEffect): LayoutNumbers {
  switch (change.code) {
    case 'drilling-angle-by':
      return { ...layout, drillingAngleDeg: layout.drillingAngleDeg + change.params.byDeg };
    case 'pin-to-pap-by':
      return { ...layout, pinToPapIn: layout.pinToPapIn + change.params.byIn };
    case 'val-angle-by':
      return { ...layout, valAngleDeg: layout.valAngleDeg + change.params.byDeg };
  }
}

/** All six neighbours, as they would be written. */
const all = ({ drillingAngleDeg, pinToPapIn, valAngleDeg }: LayoutNumbers): LayoutNumbers[] =>
  [-1, 1].flatMap((side) => [
    { drillingAngleDeg: drillingAngleDeg + 10 * side, pinToPapIn, valAngleDeg },
    { drillingAngleDeg, pinToPapIn: pinToPapIn + 0.25 * side, valAngleDeg },
    { drillingAngleDeg, pinToPapIn, valAngleDeg: valAngleDeg + 10 * side },
  ]);

describe('one more step in each number of a layout', () => {
  const inside: LayoutNumbers = { drillingAngleDeg: 50, pinToPapIn: 4.5, valAngleDeg: 40 };
  const corner: LayoutNumbers = { drillingAngleDeg: 90, pinToPapIn: 6, valAngleDeg: 20 };
  let cache: ScoredCache;
  const found: (readonly StepEffect[])[] = [];
  let kept: Setting;
  const layouts = [inside, corner];
  const allowed: LayoutNumbers[][] = [];

  beforeAll(() =>
    withSetting(inputs, { seed: 1, workers: 1, pinSide: 'above', budget: SMALL_BUDGET }, async (setting) => {
      kept = setting;
      cache = (await cacheOutcomes(setting)).by(physicsVoice([target]));
      const { radius } = setting.ball.published;
      const nominal = (list: readonly LayoutNumbers[]) =>
        setting.evaluator.evaluate(list.map((each) => ({ layout: toLayout(each, radius), world: 0 })));
      const own = await nominal(layouts);
      const { rows } = await simulateLayouts(
        layouts.map((layout, i) => ({ layout, outcome: own[i]! })),
        cache,
        setting,
      );
      for (const row of rows) found.push(await oneMoreStep(row, cache, setting));
      for (const layout of layouts) {
        const near = all(layout).filter(({ drillingAngleDeg, pinToPapIn, valAngleDeg }) =>
          [drillingAngleDeg >= 10 && drillingAngleDeg <= 90, pinToPapIn <= 6, valAngleDeg >= 20].every(
            Boolean,
          ),
        );
        const outcomes = await nominal(near);
        allowed.push(near.filter((each, i) => objections(each, outcomes[i]!, setting).length === 0));
      }
    }),
  );

  test('only what the trade drills and the search would not set aside is offered, and all of it', () => {
    const sorted = (list: readonly LayoutNumbers[]): string[] =>
      list.map((each) => JSON.stringify(each)).sort();
    for (const [i, layout] of layouts.entries())
      expect(sorted(found[i]!.map((step) => stepped(layout, step)))).toEqual(sorted(allowed[i]!));
    expect(found[0]!.length).toBeGreaterThan(found[1]!.length);
    expect(found[1]!.length).toBeGreaterThan(0);
  });

  test('its score and numbers are mean changes over the first worlds, paired with the layout itself', () => {
    for (const [i, layout] of layouts.entries()) {
      const own = cache.get(layout)!;
      for (const step of found[i]!) {
        const there = cache.get(stepped(layout, step))!;
        expect(there.outcomes).toHaveLength(kept.budget.stepWorlds);
        const changes = there.scores.flatMap((score, k) => {
          const before = own.scores[k]!;
          return score === null || before === null ? [] : [score - before];
        });
        expect(step.score).toBeCloseTo(mean(changes), 9);
        const pairs = there.outcomes
          .map((outcome, k) => [own.outcomes[k]!, outcome] as const)
          .filter(([a, b]) => a.shot === 'pins' && b.shot === 'pins');
        for (const id of ['hookStartFt', 'totalHookBoards', 'sharpnessDegPerFt', 'flareIn'] as const)
          expect(step[id]).toBeCloseTo(mean(pairs.map(([a, b]) => reader(id)(b) - reader(id)(a))), 9);
      }
    }
  });
});
