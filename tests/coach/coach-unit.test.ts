import { expect, test } from 'vitest';
import { coachUnit } from '../../src/coach/coach-unit.js';
import { usualGrip } from '../../src/records/schemas/grip.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';

test('coachUnit: each ball that cannot be is refused in a line of its own, as data that JSON keeps', async () => {
  const bowler = { ...averageBowler, grip: { ...usualGrip(true), thumb: null } }; // and thumbHole says true
  const balls = ['one', 'two'].map((name) => ({ ...plainBall, name }));
  const lines = await coachUnit({ bowler, lane: houseLane, balls, want: { totalHook: 4 } }, { seed: 1 });
  expect(lines).toEqual(
    ['one', 'two'].map((ball) => ({
      schema: 'flarewise/coach-fault/2',
      bowler: bowler.name,
      ball,
      lane: houseLane.name,
      refusals: [{ code: 'thumb-disagrees', params: { hasThumbHole: true } }],
    })),
  );
  expect(JSON.parse(JSON.stringify(lines))).toEqual(lines);
});
