import { describe, expect, test } from 'vitest';
import { cacheOutcomes } from '../../src/search/outcome-cache.js';
import { physicsVoice } from '../../src/search/voices/physics-voice.js';
import type { Evaluator, Trial } from '../../src/simulate/evaluator.js';
import type { Setting } from '../../src/simulate/setting.js';
import type { Outcome } from '../../src/simulate/simulator.js';

/** An engine that keeps what it was asked; total hook tells the trial. */
function recorder() {
  const asked: Trial[] = [];
  const evaluator: Evaluator = {
    async evaluate(given) {
      const trials = given as readonly Trial[];
      asked.push(...trials);
      return trials.map((trial): Outcome => {
        const reaction = { totalHook: trial.world + trial.layout.drillingAngle, entryAngle: 0.08 };
        return { launch: trial.launch ?? { x: 0, angle: 0.01 }, shot: 'pins', reaction } as Outcome;
      });
    },
  };
  const problem = {
    ball: { published: { radius: 0.1085 } },
    worlds: Array.from({ length: 6 }),
    luck: Array.from({ length: 5 }),
  } as unknown as Setting['problem'];
  return { asked, setting: { problem, evaluator } };
}

const shot = (drillingAngleDeg: number) => ({
  layout: { drillingAngleDeg, pinToPapIn: 4, valAngleDeg: 40 },
  outcome: { launch: { x: 0.1, angle: 0.02 } } as Outcome,
});

describe('cacheOutcomes', () => {
  test('each layout meets each world once, on its own line, however often and from whichever list it is asked for', async () => {
    const { asked, setting } = recorder();
    const outcomes = await cacheOutcomes(setting);
    const cache = outcomes.by(physicsVoice([]));
    const before = asked.length;
    expect(before).toBe(1 + 5); // the middle layout, and its luck
    await cache.roll([shot(10), shot(20), shot(10)], 2);
    await cache.roll([shot(20)], 4);
    await cache.roll([shot(10), shot(20)], 99);
    const rolled = asked.slice(before);
    expect(rolled.every(({ launch }) => launch?.angle === 0.02)).toBe(true);
    const seen = rolled.map(({ layout, world }) => `${Math.round(57.3 * layout.drillingAngle)} ${world}`);
    expect([...seen].sort()).toEqual([10, 20].flatMap((a) => [1, 2, 3, 4, 5].map((w) => `${a} ${w}`)).sort());
    expect(outcomes.shots()).toBe(5 + 10);
    expect(cache.get(shot(20).layout)?.scores).toHaveLength(5);
    expect(cache.get(shot(30).layout)).toBeUndefined();
  });

  test('outcomes stand in the order of worlds, those of the problem after the nominal one', async () => {
    const { setting } = recorder();
    const outcomes = await cacheOutcomes(setting);
    const cache = outcomes.by(physicsVoice([]));
    await cache.roll([shot(30), shot(40)], 3);
    await cache.roll([shot(40)], 5);
    const hooks = cache.get(shot(40).layout)!.outcomes.map(({ reaction }) => reaction.totalHook);
    hooks.forEach((hook, i) => {
      expect(hook - hooks[0]).toBeCloseTo(i, 12);
    });
    expect(hooks).toHaveLength(5);
  });
});
