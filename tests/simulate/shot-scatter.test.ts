import { beforeAll, describe, expect, test } from 'vitest';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import { COMPARED_IDS } from '../../src/records/schemas/reaction-numbers.js';
import { withSetting } from '../../src/simulate/setting.js';
import type { ShotProblem } from '../../src/simulate/shot-problem.js';
import { type ShotScatter, shotScatter } from '../../src/simulate/shot-scatter.js';
import { simulator } from '../../src/simulate/simulator.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';
import { TINY_BUDGET } from '../support/small-budget.js';

describe('shotScatter of an average bowler', () => {
  let problem: ShotProblem;
  let scatter: ShotScatter;
  beforeAll(async () => {
    const inputs = { bowler: averageBowler, ball: plainBall, lane: houseLane, want: {} };
    problem = await withSetting(
      inputs,
      { seed: 1, workers: 1, pinSide: 'above', budget: TINY_BUDGET },
      async (setting) => setting.problem,
    );
    scatter = shotScatter(problem, averageBowler, 1);
  });

  test('every number varies from shot to shot, by a few feet and boards at most', () => {
    for (const id of COMPARED_IDS) expect(scatter[id], id).toBeGreaterThan(0);
    expect(scatter.hookStartFt).toBeLessThan(6);
    expect(scatter.totalHookBoards).toBeLessThan(8);
  });

  test('the same seed says the same; another seed much the same', () => {
    expect(shotScatter(problem, averageBowler, 1)).toEqual(scatter);
    const other = shotScatter(problem, averageBowler, 2);
    expect(other).not.toEqual(scatter);
    // a standard deviation of 32 shots errs by 1 in √62, an eighth; the evenly spread ones by less
    for (const id of COMPARED_IDS) expect(Math.abs(other[id] / scatter[id] - 1), id).toBeLessThan(0.4);
  });

  test('how well the release is known does not count, only how well it is repeated', () => {
    const unsure = { ...averageBowler, uncertainty: { speedMph: 3, revRateRpm: 200 } };
    expect(shotScatter(problem, unsure as typeof averageBowler, 1)).toEqual(scatter);
  });

  test('is about shots that reach the pins: the usual layout on its own line does', () => {
    const layout = toLayout(MIDDLE_LAYOUT, problem.ball.published.radius);
    expect(simulator(problem).outcome(layout, problem.worlds[0], problem.launch).shot).toBe('pins');
  });
});
