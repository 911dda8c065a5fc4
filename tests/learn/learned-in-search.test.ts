import { mean } from 'simple-statistics';
import { expect, test } from 'vitest';
import { BELIEFS } from '../../src/records/shared/beliefs.js';
import { type Setting, withSetting } from '../../src/simulate/setting.js';
import type { Learned } from '../../src/simulate/worlds/learned.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';
import { SMALL_BUDGET } from '../support/small-budget.js';

const [belief] = BELIEFS;

/** Worlds and chances as a search has them. */
const searched = (learned?: Learned) =>
  withSetting(
    { bowler: averageBowler, ball: plainBall, lane: houseLane, want: {}, learned },
    { seed: 1, workers: 1, pinSide: 'above', models: null, budget: SMALL_BUDGET },
    async ({ problem, chanceOf }: Setting) => ({ worlds: problem.worlds, chance: chanceOf(belief) }),
  );

const learnedOil: Learned = {
  coordinates: ['frictionOiled', 'speedMean'],
  mean: [1.5, -1],
  lower: [
    [0.4, 0],
    [0, 0.5],
  ],
  uncertainty: { speedMph: 0.5 },
  beliefFactors: { [belief.id]: 3 },
};

test('what was learned moves the nominal world, all worlds and the chances of beliefs; the luck of shots stays', async () => {
  const [before, after] = [await searched(), await searched(learnedOil)];
  const oilOf = ({ worlds }: typeof before) =>
    worlds.slice(1).map(({ surface }) => surface.frictionOiledFactor);
  expect(before.worlds[0].surface.frictionOiledFactor).toBe(1);
  expect(after.worlds[0].surface.frictionOiledFactor).toBeCloseTo(Math.exp(0.18 * 1.5), 9);
  expect(mean(oilOf(after))).toBeGreaterThan(1.2);
  expect(mean(after.worlds.slice(1).map(({ speed }) => speed))).toBeLessThan(
    mean(before.worlds.slice(1).map(({ speed }) => speed)) - 0.15, // half a mph is 0.22 m/s
  );
  expect(after.worlds.map(({ launchAngle }) => launchAngle)).toEqual(
    before.worlds.map(({ launchAngle }) => launchAngle),
  );
  expect(after.worlds.map(({ drillingAngle }) => drillingAngle)).toEqual(
    before.worlds.map(({ drillingAngle }) => drillingAngle),
  );
  expect([before.chance, after.chance]).toEqual([0.5, 0.75]);
});
