import { sampleCorrelation } from 'simple-statistics';
import { expect, test } from 'vitest';
import { compare } from '../../../src/answer/compare.js';
import { drilledFacts } from '../../../src/answer/parts/drilled-facts.js';
import { ballProblem } from '../../../src/prepare/ball-problem.js';
import { readBall } from '../../../src/records/read/read-ball.js';
import { loadRuleSet } from '../../../src/records/shared/rules.js';
import { parseLayout } from '../../../src/records/text/layout-text.js';
import { averageBowler, houseLane } from '../../support/problems.js';
import { SMALL_BUDGET } from '../../support/small-budget.js';

test('over the layouts of an asymmetric ball, flare on the lane goes with how flare starts, and not with the total differential left after drilling', async () => {
  const ball = readBall('data/balls/asymmetric-strong.json');
  const layouts = [
    '10 x 4 1/2 x 35',
    '50 x 4 1/2 x 35',
    '90 x 4 1/2 x 35',
    '50 x 2 x 35',
    '50 x 5 1/2 x 35',
    '90 x 2 1/2 x 60',
  ].map(parseLayout);
  const { rows } = await compare(
    {
      bowler: averageBowler,
      lane: houseLane,
      want: {},
      varies: 'layout',
      entrants: layouts.map((layout) => ({ ball, layout })),
    },
    { seed: 1, workers: 1, pinSide: 'both', budget: SMALL_BUDGET },
  );
  const flare = rows.map(({ reaction }) => reaction.flareIn);
  const factsOf = drilledFacts(ballProblem(ball, averageBowler, 'moment'), loadRuleSet());
  const facts = layouts.map(factsOf);
  const starts = facts.map(({ flareStart }) => flareStart.perTurnIn);
  const differentials = facts.map(({ drilled }) => drilled.differentialIn);
  // 0.74 and -0.79: later turns depend on where the axis has gone by then
  expect(sampleCorrelation(flare, starts)).toBeGreaterThan(0.7);
  expect(sampleCorrelation(flare, differentials)).toBeLessThan(0);
});
