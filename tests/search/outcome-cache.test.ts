import { describe, expect, test } from 'vitest';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { cacheOutcomes } from '../../src/search/outcome-cache.js';
import { physicsVoice } from '../../src/search/voices/physics-voice.js';
import type { Voice } from '../../src/search/voices/voice.js';
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

describe('voices over the same shots', () => {
  /** Adds a board of hook to every layout whose drilling angle is over 25°, in odd worlds. */
  const believing: Voice = {
    ...physicsVoice([]),
    effectsOf: ({ drillingAngleDeg }) => Float64Array.of(drillingAngleDeg > 25 ? 1 : 0),
    outcome: ([added], world, { reaction, ...rest }) => ({
      ...rest,
      reaction: { ...reaction, totalHook: reaction.totalHook + (world % 2) * added },
    }),
  };

  test('a shot that one voice has asked for is not rolled again for another, which reads it its own way', async () => {
    const { asked, setting } = recorder();
    const outcomes = await cacheOutcomes(setting);
    const [plain, moved] = [outcomes.by(physicsVoice([])), outcomes.by(believing)];
    await plain.roll([shot(20), shot(30)], 4);
    const before = asked.length;
    await moved.roll([shot(20), shot(30)], 4);
    expect(asked).toHaveLength(before);
    const hooks = (cache: typeof plain, angle: number): number[] =>
      cache.get(shot(angle).layout)!.outcomes.map(({ reaction }) => reaction.totalHook);
    expect(hooks(moved, 20)).toEqual(hooks(plain, 20));
    expect(hooks(moved, 30).map((hook, i) => hook - hooks(plain, 30)[i])).toEqual([0, 1, 0, 1]);
  });

  test('a ball that misses the pins has no score in that world; the mean is over the others, and it says how often it arrives', async () => {
    const { setting } = recorder();
    const lost: Voice = {
      ...physicsVoice([]),
      outcome: (_, world, outcome) => ({ ...outcome, shot: world === 1 ? 'gutter' : 'pins' }),
    };
    const cache = (await cacheOutcomes(setting)).by(lost);
    await cache.roll([shot(20)], 4);
    const { scores, meanScore, arrives } = cache.get(shot(20).layout)!;
    expect(scores[1]).toBeNull();
    expect(scores.filter((score) => score !== null)).toHaveLength(3);
    expect(meanScore).toBeCloseTo(scores[0]!, 12); // all alike but the one that is not there: no zero in the mean
    expect(meanScore).toBeGreaterThan(0);
    expect(arrives).toBeCloseTo(3 / 4, 12);
  });

  test('what two voices ask for at the same time is rolled once, and each sees its own worlds in their order', async () => {
    const { asked, setting } = recorder();
    const outcomes = await cacheOutcomes(setting);
    const [one, other] = [outcomes.alone(physicsVoice([])), outcomes.alone(physicsVoice([]))];
    const before = asked.length;
    await Promise.all([
      one.roll([shot(20)], 2),
      other.roll([shot(20)], 5).then(() => expect(other.get(shot(20).layout)!.scores).toHaveLength(5)),
    ]);
    expect(asked.slice(before).map(({ world }) => world)).toEqual([1, 2, 3, 4, 5]);
    expect(one.get(shot(20).layout)!.scores).toHaveLength(2);
    const hooks = other.get(shot(20).layout)!.outcomes.map(({ reaction }) => reaction.totalHook);
    hooks.forEach((hook, i) => {
      expect(hook - hooks[0]).toBeCloseTo(i, 12);
    });
  });

  test('alone, a voice sees the shots it asked for and nothing of what others rolled', async () => {
    const { asked, setting } = recorder();
    const outcomes = await cacheOutcomes(setting);
    const all = outcomes.by(believing);
    const own = outcomes.alone(physicsVoice([]));
    await all.roll([shot(20), shot(30)], 5);
    expect(own.known()).toEqual([]);
    expect(own.get(shot(20).layout)).toBeUndefined();
    const before = asked.length;
    await own.roll([shot(20)], 2);
    expect(asked).toHaveLength(before);
    expect(own.get(shot(20).layout)!.scores).toHaveLength(2);
    await own.roll([shot(20), shot(40)], 3);
    await own.roll([shot(20)], 1);
    expect(own.known().map(({ layout, worlds }) => [layout.drillingAngleDeg, worlds.scores.length])).toEqual([
      [20, 3],
      [40, 3],
    ]);
    expect(all.known()).toHaveLength(3);
  });
});

test('what another is rolling just now is waited for, not rolled again', async () => {
  const { asked, setting } = recorder();
  const outcomes = await cacheOutcomes(setting);
  const { evaluate } = setting.evaluator;
  let goOn = () => {};
  const gate = new Promise<void>((resolve) => {
    goOn = resolve;
  });
  setting.evaluator.evaluate = async (trials, onDone) => {
    if (trials.length > 2) await gate; // the first to ask waits
    return evaluate(trials, onDone);
  };
  const [one, other] = [outcomes.by(physicsVoice([])), outcomes.by(physicsVoice([]))];
  const slow = one.roll([shot(20)], 4);
  const before = asked.length;
  let isThere = false;
  const quick = other.roll([shot(20), shot(30)], 2).then(() => {
    isThere = true;
  });
  await new Promise((resolve) => setTimeout(resolve, 5));
  expect(isThere).toBe(false);
  goOn();
  await Promise.all([slow, quick]);
  expect(asked.length - before).toBe(4 + 2);
  for (const angle of [20, 30]) expect(other.get(shot(angle).layout)!.outcomes.every(Boolean)).toBe(true);
  expect(other.get(shot(20).layout)!.scores).toHaveLength(4);
});

test('the usual layout is the middle of all, with its nominal shot; luck is its own, on that line', async () => {
  const { asked, setting } = recorder();
  const outcomes = await cacheOutcomes(setting);
  const cache = outcomes.by(physicsVoice([]));
  expect(outcomes.middle.layout).toEqual(MIDDLE_LAYOUT);
  expect(outcomes.middle.outcome.launch).toEqual({ x: 0, angle: 0.01 });
  expect([cache.middle, outcomes.alone(physicsVoice([])).middle]).toEqual([outcomes.middle, outcomes.middle]);
  expect(asked.map(({ world, launch }) => [world, launch?.angle])).toEqual([
    [0, undefined],
    ...[6, 7, 8, 9, 10].map((world) => [world, 0.01]),
  ]);
  expect(new Set(asked.map(({ layout }) => Math.round((180 / Math.PI) * layout.drillingAngle)))).toEqual(
    new Set([50]),
  );
});

test('targets move along with what luck does to the usual layout, world by world', async () => {
  const { setting } = recorder();
  const target = { wish: 'totalHook', step: 3, value: 2, low: 0, high: 4 } as const;
  const { targets } = (await cacheOutcomes(setting)).by(physicsVoice([target]));
  // total hook tells the world: 0 in the nominal one, 6 and on in luck alone
  expect(targets.map(([{ value }]) => value)).toEqual(
    [8, 9, 10, 11, 12].map((value) => expect.closeTo(value, 10)),
  );
});
