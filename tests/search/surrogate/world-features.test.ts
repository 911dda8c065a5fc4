import { describe, expect, test } from 'vitest';
import { MIDDLE_LAYOUT } from '../../../src/prepare/middle-layout.js';
import { toLayout } from '../../../src/prepare/to-layout.js';
import { BALL_FEATURES, WORLD_FEATURES, writeWorldFeatures } from '../../../src/regression/features.js';
import { shareRegression } from '../../../src/regression/open-regression.js';
import { worldFeatures } from '../../../src/search/surrogate/world-features.js';
import { withSetting } from '../../../src/simulate/setting.js';
import { scatteredLaunch, simulator } from '../../../src/simulate/simulator.js';
import { averageBowler, houseLane, plainBall } from '../../support/problems.js';
import { SMALL_BUDGET } from '../../support/small-budget.js';

const inputs = { bowler: averageBowler, ball: plainBall, lane: houseLane, want: {} };
const options = { seed: 1, workers: 1, pinSide: 'above' as const, budget: SMALL_BUDGET };

/** As far as the own lines of layouts of one ball lie apart, rad: a degree. */
const SPAN = 0.0175;

describe('worldFeatures', () => {
  test('exact at the ends and in the middle, beyond, and from another laydown; near in between', () =>
    withSetting(inputs, options, async ({ problem }) => {
      const regression = await shareRegression().open();
      if (regression.kind === 'unusable') throw new Error(regression.why.code);
      const ranges = regression.card.inputs
        .slice(BALL_FEATURES.length)
        .map(({ least, most }) => most - least);
      const engine = simulator(problem);
      const { x, angle } = problem.launch;
      const deviations = problem.worlds[3];
      const world = engine.inputs(toLayout(MIDDLE_LAYOUT, problem.ball.published.radius), deviations);
      const write = worldFeatures(x, Float64Array.of(angle - SPAN / 2, angle + SPAN / 2))(deviations, world);
      const both = (laydown: number, turn: number) => {
        const [shared, own] = [
          new Float32Array(WORLD_FEATURES.length),
          new Float32Array(WORLD_FEATURES.length),
        ];
        write(shared, 0, laydown, angle + turn);
        const launch = scatteredLaunch({ x: laydown, angle: angle + turn }, deviations);
        const { body, release, surface, freshSurface } = world;
        writeWorldFeatures(own, 0, body.radius, release, launch, surface, freshSurface);
        return { shared, own };
      };
      for (const [laydown, turn] of [
        [x, -SPAN / 2],
        [x, 0],
        [x, SPAN / 2],
        [x, SPAN],
        [x, -SPAN],
        [x + 0.05, SPAN / 7],
      ]) {
        const { shared, own } = both(laydown, turn);
        for (const [i, value] of own.entries())
          expect(Math.abs(shared[i] - value)).toBeLessThanOrEqual(1e-6 * Math.max(1, Math.abs(value)));
      }
      const { shared, own } = both(x, SPAN / 5);
      expect(shared).not.toEqual(own); // not worked out anew
      for (const [i, value] of own.entries())
        expect(Math.abs(shared[i] - value), WORLD_FEATURES[i].name).toBeLessThan(0.02 * ranges[i]);
    }));
});
