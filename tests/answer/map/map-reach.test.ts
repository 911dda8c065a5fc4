import { expect, test } from 'vitest';
import { compare } from '../../../src/answer/compare.js';
import { MATTERS_FROM } from '../../../src/answer/map/map-reach.js';
import { MIDDLE_LAYOUT } from '../../../src/prepare/middle-layout.js';
import { readBall } from '../../../src/records/read/read-ball.js';
import type { PublishedBall } from '../../../src/records/schemas/ball.js';
import { parseLayout } from '../../../src/records/text/layout-text.js';
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

test('the same of intermediate differential takes flare away where the mark lies a quarter of the ball from the PAP, and does little to it at the middle layout', async () => {
  const ball = readBall('data/balls/asymmetric-strong.json') as PublishedBall;
  const more = {
    ...ball,
    name: 'more',
    intermediateDifferentialIn: ball.intermediateDifferentialIn + MATTERS_FROM.in,
  };
  const flareBy = async (text: string): Promise<number> => {
    const { rows } = await compare(
      {
        bowler: averageBowler,
        lane: houseLane,
        want: {},
        varies: 'ball',
        entrants: [ball, more].map((each) => ({ ball: each, layout: parseLayout(text) })),
      },
      { seed: 1, workers: 1, pinSide: 'both', budget: SMALL_BUDGET },
    );
    return rows[1].fromFirst!.physics.size.flareIn;
  };
  // demo bowler on the demo house shot, usual budget: -0.20 and +0.02 in
  const square = await flareBy('90 x 4 1/2 x 35');
  expect(square).toBeLessThan(-0.08);
  expect(square).toBeGreaterThan(-MATTERS_FROM.flareIn);
  expect(Math.abs(await flareBy('50 x 4 1/2 x 35'))).toBeLessThan(0.08);
});
