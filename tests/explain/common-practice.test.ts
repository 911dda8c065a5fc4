import { beforeAll, describe, expect, test } from 'vitest';
import { FOOT, to } from '../../src/base/units.js';
import { commonPractice } from '../../src/explain/common-practice.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import type { PracticeFinding } from '../../src/records/answers/statements/practice.js';
import { demoShelf } from '../../src/records/read/shelf.js';
import { withSetting } from '../../src/simulate/setting.js';
import type { Outcome } from '../../src/simulate/simulator.js';
import { said } from '../support/said.js';

const { bowlers, balls, lanes } = demoShelf();
const byId = <T>(list: readonly { id: string; record: T }[], id: string): T =>
  list.find((each) => each.id === id)!.record;

describe('what common practice expects of an average bowler on an easy lane', () => {
  let answers: PracticeFinding[] = [];
  let early: Outcome;
  let late: Outcome;
  beforeAll(async () => {
    const inputs = {
      bowler: byId(bowlers, 'average-right'),
      ball: byId(balls, 'plain-medium'),
      lane: byId(lanes, 'house-easy'),
      want: {},
    };
    await withSetting(inputs, { seed: 1, workers: 1, pinSide: 'above' }, async (setting) => {
      answers = await commonPractice(MIDDLE_LAYOUT, setting);
      const { radius } = setting.ball.published;
      [early, late] = (await setting.evaluator.evaluate(
        [20, 80].map((drillingAngleDeg) => ({
          layout: toLayout({ ...MIDDLE_LAYOUT, drillingAngleDeg }, radius),
          world: 0,
        })),
      )) as [Outcome, Outcome];
    });
  });

  test('flares most near 3 3/8 in, in every world (common practice, no source)', () => {
    const flare = answers.find(({ params }) => params.reading === 'flareIn')?.params;
    expect(flare).toMatchObject({ verdict: 'agrees', holdsIn: 1 });
    expect(flare?.change).toBeGreaterThan(0.5);
  });

  test('tells the nominal change that two shots show, and in how many worlds it holds', () => {
    const found = answers.find(({ params }) => params.reading === 'hookStartFt')!;
    const later = found.params;
    expect(later.change).toBe(to(late.reaction.hookStart, FOOT) - to(early.reaction.hookStart, FOOT));
    expect(said([found])).toContain(`${Math.abs(later.change).toFixed(1)} ft;`);
    expect(Math.round(later.holdsIn * later.worlds)).toBeCloseTo(later.holdsIn * later.worlds, 9);
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
