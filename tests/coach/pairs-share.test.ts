import { afterAll, expect, test } from 'vitest';
import { coachUnit } from '../../src/coach/coach-unit.js';
import { pairsShare } from '../../src/coach/pairs-share.js';
import { demoShelf } from '../../src/records/read/shelf.js';
import { shareRegression } from '../../src/regression/open-regression.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';
import { SMALL_BUDGET } from '../support/small-budget.js';

const share = pairsShare();
afterAll(() => share.regression.close());

const balls = [plainBall, { ...plainBall, name: 'Other', rgIn: 2.6 }];
const lanes = [houseLane, demoShelf().lanes.find(({ id }) => id === 'short')!.record];
const units = lanes.map((lane) => ({ bowler: averageBowler, lane, balls, want: { totalHook: 4 } as const }));
const options = { seed: 1, budget: SMALL_BUDGET };

test('pairs answer alike whether they share or not, and share what they can', async () => {
  let fits = 0;
  let made = 0;
  let opened = 0;
  const counted = {
    fitter: ((...asked) => {
      fits += 1;
      return share.fitter(...asked);
    }) satisfies typeof share.fitter,
    readyBall: ((...asked) => {
      made += 1;
      return share.readyBall(...asked);
    }) satisfies typeof share.readyBall,
    regression: {
      ...share.regression,
      open: () => {
        opened += 1;
        return share.regression.open();
      },
    },
  };
  const together = [];
  for (const unit of units) together.push(await coachUnit(unit, { ...options, ...counted }));
  const alone = await Promise.all(units.map((unit) => coachUnit(unit, options)));
  expect(JSON.stringify(together)).toBe(JSON.stringify(alone));
  expect(made).toBe(units.length * balls.length * balls.length); // each pair asks for its ball and for every other
  expect(fits).toBe(balls.length);
  expect(opened).toBe(units.length * balls.length);
});

test('what pairs share is made once', async () => {
  const { readyBall, fitter } = pairsShare();
  const ask = () => readyBall(plainBall, averageBowler, 'moment', fitter, SMALL_BUDGET);
  expect(ask()).toBe(ask());
  expect(readyBall(plainBall, { ...averageBowler, hand: 'left' }, 'moment', fitter, SMALL_BUDGET)).not.toBe(
    ask(),
  );
  const regression = shareRegression();
  expect(await regression.open()).toBe(await regression.open());
  await regression.close();
});
