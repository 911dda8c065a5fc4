import { describe, expect, test } from 'vitest';
import { driller } from '../../src/ball/drill.js';
import { inertiaNumbers } from '../../src/ball/drilled-numbers.js';
import { placeLayout } from '../../src/layout/placement.js';
import { ballProblem } from '../../src/recommend/ball-problem.js';
import { drilledFacts } from '../../src/recommend/drilled-facts.js';
import { toLayout } from '../../src/recommend/to-layout.js';
import type { Ball, PublishedBall } from '../../src/records/ball.js';
import { parseLayout } from '../../src/records/layout-text.js';
import { readBall } from '../../src/records/read-ball.js';
import { loadRuleSet } from '../../src/records/rules.js';
import { INCH, to } from '../../src/units.js';
import { averageBowler, plainBall } from './fixtures.js';

const LAYOUTS = ['70 x 4 1/2 x 35', '30 x 4 x 30', '50 x 4 1/2 x 35', '10 x 5 1/2 x 60', '90 x 2 x 20'];

const shelf = (name: string): PublishedBall => readBall(`data/balls/${name}.json`) as PublishedBall;
const unshaped = (ball: PublishedBall): Ball => {
  const { coreShape: _, ...rest } = ball;
  return rest;
};

describe.each([
  { name: 'lobed-strong', ball: shelf('lobed-strong') },
  { name: 'lobed-strong, its shape not known', ball: unshaped(shelf('lobed-strong')) },
  { name: 'lobed-medium', ball: shelf('lobed-medium') },
  { name: 'lobed-medium, its shape not known', ball: unshaped(shelf('lobed-medium')) },
  { name: 'asymmetric-strong', ball: shelf('asymmetric-strong') },
  { name: 'plain', ball: plainBall },
])('drilledFacts: $name', ({ ball }) => {
  const problem = ballProblem(ball, averageBowler, 'moment');
  const factsOf = drilledFacts(problem, loadRuleSet());

  test.each(LAYOUTS)('%s: half of the cores have less than each number shown, half have more', (text) => {
    const layout = parseLayout(text);
    const { drilled } = factsOf(layout);
    const { R_BC } = placeLayout(toLayout(layout, problem.published.radius), problem.pap_B);
    const cores = problem.bodies.map((body) => inertiaNumbers(driller(body, problem.rankingRays)(R_BC)));
    for (const [key, pick] of [
      ['rgIn', 'lowRg'],
      ['differentialIn', 'differential'],
      ['intermediateDifferentialIn', 'intermediateDifferential'],
    ] as const) {
      const below = cores.filter((core) => to(core[pick], INCH) < drilled[key]).length;
      expect(below).toBe(cores.length / 2);
    }
  });

  test.each(LAYOUTS)('%s: no number lies outside its band as both are printed', (text) => {
    const { drilled, bands } = factsOf(parseLayout(text));
    for (const key of ['rgIn', 'differentialIn', 'intermediateDifferentialIn'] as const)
      for (const digits of [2, 3, 4]) {
        const [low, value, high] = [bands[key].low, drilled[key], bands[key].high].map((x) =>
          Number(x.toFixed(digits)),
        );
        expect(value).toBeGreaterThanOrEqual(low);
        expect(value).toBeLessThanOrEqual(high);
      }
  });
});
