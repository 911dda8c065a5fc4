import { quantileSorted } from 'simple-statistics';
import { WISHES, type Wish } from '../../records/schemas/reaction-numbers.js';
import { type AskedWish, isNoWish, readWish } from '../../records/schemas/read-wish.js';
import type { Want } from '../../records/schemas/want.js';
import { type Reached, wishedInUnit, wishedNumber } from '../../simulate/readings.js';

/** What a wish aims for, in the reaction number's SI unit. */
export interface Target {
  readonly wish: Wish;
  /** Of five; null where a number was asked for. */
  readonly step: number | null;
  /** The number that was asked for, also where no layout attains it; left out where a step was. */
  readonly asked?: number;
  readonly value: number;
  /** What nearly all layouts of this ball attain: its 2nd and 98th percentile. */
  readonly low: number;
  readonly high: number;
}

const QUANTILE_OF_STEP = [0.02, 0.25, 0.5, 0.75, 0.98] as const;

/**
 * Turns wishes into numbers that this bowler can get from this ball on this lane: steps 1 to 5 are quantiles of
 * what the attainable layouts do, so no more is promised than the ball can do. A number asked for is itself the target, limited to the
 * range of nearly all layouts. Where no layout is allowed, wishes aim for nothing.
 *
 * @param attainable  outcomes of a grid over all allowed layouts
 */
export function targetsOf(want: Want, attainable: readonly Reached[]): readonly Target[] {
  if (attainable.length === 0) return [];
  return WISHES.flatMap((wish): Target[] => {
    const given = want[wish];
    if (given === undefined) return [];
    const { step, number } = askedWish(wish, given);
    const sorted = attainable.map((outcome) => wishedNumber(wish, outcome)).sort((a, b) => a - b);
    const quantile = (p: number): number => quantileSorted(sorted, p);
    const [low, high] = [quantile(0.02), quantile(0.98)];
    if (step !== null)
      return [{ wish, step, value: quantile(QUANTILE_OF_STEP[step - 1] as number), low, high }];
    const asked = number / wishedInUnit(wish, 1); // in proportion to SI
    return [{ wish, step, asked, value: Math.min(Math.max(asked, low), high), low, high }];
  });
}

/** @throws {Error} for what the schema of wants refuses */
function askedWish(wish: Wish, given: number | string): AskedWish {
  const asked = readWish(wish, given);
  if (isNoWish(asked)) throw new Error(`${wish} ${asked.rule}`);
  return asked;
}
