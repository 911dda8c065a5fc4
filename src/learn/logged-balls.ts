import { keptLayoutOn } from '../prepare/layout-on-ball.js';
import { type Shelf, type Shelved, shelvedAs } from '../records/read/shelf.js';
import type { DrilledLayout } from '../records/schemas/drilled-layout.js';
import type { Night } from '../records/schemas/shot-log.js';
import type { LoggedBall, LoggedNight } from './logged.js';

/** Why a ball, or some of its nights, are left out of learning. */
export interface LeftOut {
  /** The kept drilled layout. */
  readonly id: string;
  readonly why: 'ball-not-kept' | 'layout-not-of-ball' | 'lane-not-kept';
  /** The lane or ball that the record names. */
  readonly named: string;
  readonly nights: number;
}

/** Which nights are meant. */
export interface NightsMeant {
  /** From this day on, such as "2026-03-31"; nights without a day are then left out. */
  readonly since?: string | undefined;
  /** On lanes of these ids or names; on all when left out. */
  readonly lanes?: readonly string[] | undefined;
}

/** Whether a night is meant. */
export const isMeant = ({ on, lane }: Pick<Night, 'on' | 'lane'>, { since, lanes }: NightsMeant): boolean =>
  (since === undefined || (on !== undefined && on >= since)) && (lanes === undefined || lanes.includes(lane));

/**
 * The drilled balls of a bowler with their nights. Kept records name balls and lanes by id or by name.
 *
 * @param bowler  the bowler's id or name, or both
 */
export function loggedBalls(
  layouts: readonly Shelved<DrilledLayout>[],
  { balls, lanes }: Pick<Shelf, 'balls' | 'lanes'>,
  bowler: readonly string[],
  meant: NightsMeant = {},
): { readonly balls: readonly LoggedBall[]; readonly leftOut: readonly LeftOut[] } {
  const found: LoggedBall[] = [];
  const leftOut: LeftOut[] = [];
  for (const { id, record } of layouts.filter((each) => bowler.includes(each.record.bowler))) {
    const asked = record.nights.filter((night) => night.shots.length > 0 && isMeant(night, meant));
    if (asked.length === 0) continue;
    const skip = (why: LeftOut['why'], named: string, nights: number) =>
      leftOut.push({ id, why, named, nights });
    const ball = shelvedAs(balls, record.ball)?.record;
    const layout = ball && keptLayoutOn(record, ball);
    if (!ball || !layout) {
      skip(ball ? 'layout-not-of-ball' : 'ball-not-kept', record.ball, asked.length);
      continue;
    }
    const nights = asked.flatMap((night): LoggedNight[] => {
      const lane = shelvedAs(lanes, night.lane)?.record;
      if (!lane) skip('lane-not-kept', night.lane, 1);
      return lane ? [{ night, lane }] : [];
    });
    if (nights.length > 0) found.push({ ball, layout, nights });
  }
  return { balls: found, leftOut };
}
