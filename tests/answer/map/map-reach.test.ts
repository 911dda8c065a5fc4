import { expect, test } from 'vitest';
import { compare } from '../../../src/answer/compare.js';
import { MATTERS_FROM } from '../../../src/answer/map/map-reach.js';
import { MIDDLE_LAYOUT } from '../../../src/prepare/middle-layout.js';
import { averageBowler, houseLane, plainBall } from '../../support/problems.js';
import { SMALL_BUDGET } from '../../support/small-budget.js';

test('what counts as a move, of total differential, moves flare by about what is said and the hook start by less: the same ball made with it', async () => {
  const layout = MIDDLE_LAYOUT;
  const more = {
    ...plainBall,
    name: 'more',
    differentialIn: (plainBall.differentialIn ?? 0) + MATTERS_FROM.in,
  };
  const { rows } = await compare(
    {
      bowler: averageBowler,
      lane: houseLane,
      want: {},
      varies: 'ball',
      entrants: [plainBall, more].map((ball) => ({ ball, layout })),
    },
    { seed: 1, workers: 1, pinSide: 'both', budget: SMALL_BUDGET },
  );
  const { size } = rows[1].fromFirst!.physics;
  // over two bowlers and four balls with the usual budget: 0.21 to 0.34 in of flare, 0.04 to 0.07 ft earlier
  expect(Math.abs(size.flareIn - MATTERS_FROM.flareIn)).toBeLessThan(0.15);
  expect(Math.abs(size.hookStartFt)).toBeLessThan(MATTERS_FROM.hookStartFt);
});
