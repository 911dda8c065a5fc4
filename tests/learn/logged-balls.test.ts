import { expect, test } from 'vitest';
import { loggedBalls } from '../../src/learn/logged-balls.js';
import type { DrilledLayout } from '../../src/records/schemas/drilled-layout.js';
import { houseLane, plainBall } from '../support/problems.js';

const shots = [{ pinsBoard: 17 }];
const kept = (more: Partial<DrilledLayout>): DrilledLayout => ({
  schema: 'flarewise/layout/2',
  name: 'First',
  bowler: 'me',
  ball: 'plain',
  layout: '50 x 4 1/2 x 35',
  nights: [
    { on: '2026-03-01', lane: 'house', shots },
    { on: '2026-04-01', lane: houseLane.name, shots },
    { lane: 'elsewhere', shots },
    { on: '2026-04-02', lane: 'house', shots: [] },
  ],
  ...more,
});
const shelf = {
  balls: [{ id: 'plain', record: plainBall }],
  lanes: [{ id: 'house', record: houseLane }],
};

test('loggedBalls: nights with shots, lanes by id or name; what is not kept is named', () => {
  const { balls, leftOut } = loggedBalls([{ id: 'first', record: kept({}) }], shelf, ['me']);
  expect(balls).toHaveLength(1);
  expect(balls[0].nights.map(({ night }) => night.on)).toEqual(['2026-03-01', '2026-04-01']);
  expect(balls[0].layout.pinToPapIn).toBe(4.5);
  expect(leftOut).toEqual([{ id: 'first', why: 'lane-not-kept', named: 'elsewhere', nights: 1 }]);
});

test('loggedBalls: only from a day on, only of this bowler, and not of a ball that is not kept', () => {
  const of = (record: DrilledLayout, since?: string) =>
    loggedBalls([{ id: 'first', record }], shelf, ['me'], { since });
  expect(of(kept({}), '2026-03-15').balls[0].nights.map(({ night }) => night.on)).toEqual(['2026-04-01']);
  expect(of(kept({ bowler: 'you' })).balls).toEqual([]);
  expect(of(kept({ ball: 'gone' })).leftOut).toEqual([
    { id: 'first', why: 'ball-not-kept', named: 'gone', nights: 3 },
  ]);
});
