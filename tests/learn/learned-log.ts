import type { LoggedBall } from '../../src/learn/logged.js';
import type { Bowler } from '../../src/records/schemas/bowler.js';
import type { Lane } from '../../src/records/schemas/lane.js';
import { type Hidden, hide, hideBall, readNight, type Twist, trueNights } from '../studies/blind-logs.js';
import { random } from '../studies/random.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';

/** The layout of the tests' log. */
export const LOGGED_LAYOUT = { drillingAngleDeg: 50, pinToPapIn: 4.5, valAngleDeg: 35 };

/** A log of the tests' ball, with so many shots on each night, by a hidden bowler on a hidden lane. */
export function loggedBall(
  counts: readonly number[],
  {
    seed = 5,
    twist = {},
    bowler = averageBowler,
    lane = houseLane,
    hiddenBy = hide,
  }: {
    readonly seed?: number;
    readonly twist?: Twist;
    readonly bowler?: Bowler;
    readonly lane?: Lane;
    readonly hiddenBy?: (of: ReturnType<typeof random>) => Hidden;
  } = {},
): LoggedBall {
  const of = random(seed);
  const hidden = hiddenBy(of);
  const drilled = hideBall(of, plainBall, bowler, LOGGED_LAYOUT);
  const nightOf = trueNights(hidden, drilled, bowler, lane, twist);
  return {
    ball: plainBall,
    layout: LOGGED_LAYOUT,
    nights: counts.map((count) => ({ night: readNight(of, nightOf(of), count, twist), lane })),
  };
}
