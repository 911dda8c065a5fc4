import { describe, expect, test } from 'vitest';
import type { ProblemScorer } from '../../../src/search/surrogate/problem-scorer.js';
import { survey } from '../../../src/search/surrogate/survey.js';
import { physicsVoice } from '../../../src/search/voices/physics-voice.js';
import { madeUpSetting } from '../../support/made-up-setting.js';
import { layoutAt } from '../../support/outcomes.js';

const LAYOUTS = Array.from({ length: 12 }, (_, i) => layoutAt(10 + 5 * i));
const WORLDS = 8;

const scoreIn = (layout: number, world: number): number =>
  60 - 3 * Math.abs(layout - 4) + 2 * Math.sin(world + layout);
const chanceIn = (layout: number, world: number): number => (1 + ((layout + world) % 4)) / 4;
const over = (of: (world: number) => number, worlds: number): number =>
  Array.from({ length: worlds }, (_, world) => of(world)).reduce((sum, each) => sum + each, 0) / worlds;

/** A survey of the first ten layouts, and what was scored for it: world by world, how many layouts. */
async function surveyed(rounds: readonly { worlds: number; keep: number }[], count = LAYOUTS.length) {
  const { setting } = madeUpSetting(() => ({}));
  const scored: [number, number[]][] = [];
  const scorer: ProblemScorer = {
    layouts: LAYOUTS,
    surveyed: count,
    arithmetic: 'plain',
    by: () => async (world, which, tell) => {
      scored.push([world, [...which]]);
      for (const layout of which) tell(layout, scoreIn(layout, world), chanceIn(layout, world));
    },
    tunedTo: 77,
    shots: 33,
  };
  const reported: [number, number][] = [];
  const small = {
    ...setting,
    budget: { ...setting.budget, survey: { ...setting.budget.survey, rounds } },
    problem: { ...setting.problem, luck: setting.problem.luck.slice(0, WORLDS) },
    progress: () => (done: number, total: number) => {
      reported.push([done, total]);
    },
  };
  const result = await survey(scorer, physicsVoice([]), small);
  return { result, scored, reported };
}

describe('survey', () => {
  const rounds = [
    { worlds: 2, keep: 5 },
    { worlds: 1000, keep: 0 },
  ];

  test('ranks layouts by their mean score, those that went farther first', async () => {
    const { result, scored, reported } = await surveyed(rounds, 10);
    const inTwo = Array.from({ length: 10 }, (_, i) => i).sort(
      (a, b) => over((w) => scoreIn(b, w), 2) - over((w) => scoreIn(a, w), 2),
    );
    const inAll = inTwo
      .slice(0, 5)
      .sort((a, b) => over((w) => scoreIn(b, w), WORLDS) - over((w) => scoreIn(a, w), WORLDS));
    expect(result.ranked).toEqual([...inAll, ...inTwo.slice(5)].map((i) => LAYOUTS[i]));
    for (const i of inAll)
      expect(result.expected(LAYOUTS[i])).toBeCloseTo(
        over((w) => scoreIn(i, w), WORLDS),
        10,
      );
    // those that dropped out are moved by what the worlds they missed did to the others
    const moved = over(
      (k) => over((w) => scoreIn(inAll[k], w), WORLDS) - over((w) => scoreIn(inAll[k], w), 2),
      5,
    );
    for (const i of inTwo.slice(5))
      expect(result.expected(LAYOUTS[i])).toBeCloseTo(over((w) => scoreIn(i, w), 2) + moved, 10);
    for (const i of inAll)
      expect(result.arrives(LAYOUTS[i])).toBeCloseTo(
        over((w) => chanceIn(i, w), WORLDS),
        12,
      );
    for (const i of inTwo.slice(5))
      expect(result.arrives(LAYOUTS[i])).toBeCloseTo(
        over((w) => chanceIn(i, w), 2),
        12,
      );
    expect(scored.map(([world, which]) => [world, which.length])).toEqual(
      [10, 10, 5, 5, 5, 5, 5, 5].map((count, world) => [world, count]),
    );
    expect(result.candidateWorlds()).toBe(2 * 10 + 6 * 5);
    expect(reported).toEqual(Array.from({ length: WORLDS }, (_, world) => [world + 1, WORLDS]));
    expect(result).toMatchObject({ arithmetic: 'plain', tunedTo: 77, shots: 33 });
  });

  test('knows nothing of a layout that was not surveyed until it is looked at, in every world once', async () => {
    const { result, scored } = await surveyed(rounds, 10);
    const before = scored.length;
    const [last, other] = [LAYOUTS[11], layoutAt(77, 3.1, 66)];
    expect([result.expected(last), result.scores(last), result.scores(LAYOUTS[4])]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
    await result.look([last, other, LAYOUTS[0]]);
    await result.look([last]);
    expect(scored.slice(before)).toEqual(Array.from({ length: WORLDS }, (_, world) => [world, [11, 0]]));
    for (const i of [11, 0]) {
      expect(result.scores(LAYOUTS[i])).toEqual(
        Array.from({ length: WORLDS }, (_, world) => scoreIn(i, world)),
      );
      expect(result.expected(LAYOUTS[i])).toBeCloseTo(
        over((w) => scoreIn(i, w), WORLDS),
        10,
      );
    }
    expect([result.expected(other), result.arrives(other), result.scores(other)]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
    expect(result.candidateWorlds()).toBe(2 * 10 + 6 * 5 + 2 * WORLDS);
  });

  test('surveys all layouts where nothing else is said', async () => {
    const { result } = await surveyed([{ worlds: 1000, keep: 0 }]);
    expect(new Set(result.ranked)).toEqual(new Set(LAYOUTS));
  });
});
