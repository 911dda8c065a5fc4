import { beforeAll, describe, expect, test } from 'vitest';
import { DEGREE, FOOT, INCH } from '../../src/base/units.js';
import { commonPractice } from '../../src/explain/common-practice.js';
import { USUAL_BUDGET } from '../../src/prepare/budget.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import type { PracticeFinding } from '../../src/records/answers/statements/practice.js';
import { demoShelf } from '../../src/records/read/shelf.js';
import type { Trial } from '../../src/simulate/evaluator.js';
import { type Setting, withSetting } from '../../src/simulate/setting.js';
import type { Outcome } from '../../src/simulate/simulator.js';
import { said } from '../support/said.js';

const { bowlers, balls, lanes } = demoShelf();
const byId = <T>(list: readonly { id: string; record: T }[], id: string): T =>
  list.find((each) => each.id === id)!.record;

describe('what common practice expects of an average bowler on an easy lane', () => {
  let answers: PracticeFinding[] = [];
  beforeAll(async () => {
    const inputs = {
      bowler: byId(bowlers, 'average-right'),
      ball: byId(balls, 'plain-medium'),
      lane: byId(lanes, 'house-easy'),
      want: {},
    };
    await withSetting(inputs, { seed: 1, workers: 1, pinSide: 'above' }, async (setting) => {
      answers = await commonPractice(MIDDLE_LAYOUT, setting);
    });
  });

  test('flares most near 3 3/8 in, in every world (common practice, no source)', () => {
    const flare = answers.find(({ params }) => params.reading === 'flareIn')?.params;
    expect(flare).toMatchObject({ verdict: 'agrees', holdsIn: 1 });
    expect(flare?.change).toBeGreaterThan(0.5);
  });

  test('each belief is tried in so many worlds as the budget says, and the share that bears it out is of those', () => {
    expect(answers).toHaveLength(4);
    for (const { params } of answers) {
      expect(params.worlds).toBe(USUAL_BUDGET.practiceWorlds);
      expect(Math.round(params.holdsIn * params.worlds)).toBeCloseTo(params.holdsIn * params.worlds, 9);
    }
  });

  test('says what the engine finds where the two differ', () => {
    for (const answer of answers) {
      const { verdict, holdsIn } = answer.params;
      if (verdict === 'agrees') expect(holdsIn).toBeGreaterThanOrEqual(0.75);
      if (verdict === 'disagrees') expect(holdsIn).toBeLessThanOrEqual(0.25);
      expect(said([answer])).toMatch(/agrees|disagrees|depends|hardly/);
    }
  });
});

describe('the verdict on a made-up engine whose hook start is known in every world', () => {
  const RADIUS = 4.3 * INCH;

  /**
   * Later by `laterFt` (ft) in each world when the drilling angle goes from 20° to 80°, and by `nominalFt` in the nominal one. In the
   * 40 worlds it lies a tenth of a foot farther down from one to the next: 3.69 ft from the 5th to the 95th percentile.
   */
  async function verdictOn(
    laterFt: (world: number) => number,
    { nominalFt = 1, inGutter = (_world: number, _angleDeg: number): boolean => false } = {},
  ): Promise<PracticeFinding['params'] | undefined> {
    const outcomeOf = ({ layout, world }: Trial): Outcome => {
      const angleDeg = Math.round(layout.drillingAngle / DEGREE);
      const share = (angleDeg - 20) / 60;
      const k = Number(world) - 1;
      const hookStartFt = k < 0 ? 36 + nominalFt * share : 34 + k / 10 + laterFt(k) * share;
      return {
        launch: { x: 0, angle: 0 },
        shot: inGutter(k, angleDeg) ? 'gutter' : 'pins',
        reaction: { hookStart: hookStartFt * FOOT, sharpness: 0, totalHook: 0, flare: 0 },
      } as Outcome;
    };
    const answers = await commonPractice(MIDDLE_LAYOUT, {
      problem: {
        ball: { published: { radius: RADIUS }, marker: 'CG mark' },
        luck: Array.from({ length: 200 }),
      },
      evaluator: {
        evaluate: async (trials: readonly Trial[]) => trials.map(outcomeOf),
      },
      budget: { ...USUAL_BUDGET, practiceWorlds: 40 },
    } as unknown as Setting);
    return answers.find(({ params }) => params.reading === 'hookStartFt')?.params;
  }

  test.each([
    // +1 ft in so many of forty worlds, -1/2 ft in the others: on the mean well over 0.06 of 3.7 ft
    { name: 'three worlds in four bear it out', of: (k: number) => (k < 30 ? 1 : -0.5), verdict: 'agrees', holdsIn: 0.75 },
    { name: 'one fewer', of: (k: number) => (k < 29 ? 1 : -0.5), verdict: 'depends', holdsIn: 29 / 40 },
    { name: 'one in four', of: (k: number) => (k < 10 ? 0.5 : -1), verdict: 'disagrees', holdsIn: 0.25 },
    { name: 'one more', of: (k: number) => (k < 11 ? 0.5 : -1), verdict: 'depends', holdsIn: 11 / 40 },
    // 0.06 of 3.69 ft are 0.2214
    { name: 'all, by 0.22 ft', of: () => 0.22, verdict: 'hardly-shows', holdsIn: 1 },
    { name: 'all, by 0.23 ft', of: () => 0.23, verdict: 'agrees', holdsIn: 1 },
    { name: 'none, by 0.23 ft', of: () => -0.23, verdict: 'disagrees', holdsIn: 0 },
    { name: 'none, by 0.22 ft', of: () => -0.22, verdict: 'hardly-shows', holdsIn: 0 },
  ])('$name: $verdict', async ({ of, verdict, holdsIn }) => {
    const answer = await verdictOn(of);
    expect(answer).toMatchObject({ verdict, worlds: 40 });
    expect(answer!.holdsIn).toBeCloseTo(holdsIn, 12);
  }); // biome-ignore format: one row a case

  test('the change told is that of the nominal world', async () => {
    const later = await verdictOn(() => 1, { nominalFt: 1.7 });
    expect(later!.change).toBeCloseTo(1.7, 9);
    expect(said([{ code: 'drilling-angle-hooks-later', params: later! }])).toContain('+1.7 ft');
    expect((await verdictOn(() => 1, { nominalFt: -0.4 }))!.change).toBeCloseTo(-0.4, 9);
  });

  test('worlds in which either end misses the pins do not count', async () => {
    const missed = (k: number, angleDeg: number): boolean =>
      (k >= 30 && angleDeg === 80) || (k >= 0 && k < 4 && angleDeg === 20);
    const answer = await verdictOn((k) => (k < 17 ? 1 : -0.5), { inGutter: missed });
    expect(answer!.worlds).toBe(26);
    expect(answer!.holdsIn).toBeCloseTo(13 / 26, 12);
    expect(await verdictOn(() => 1, { inGutter: (k) => k >= 0 })).toBeUndefined();
  });
});
