import { quantileSorted } from 'simple-statistics';
import { WISHES, type Wish } from '../../records/schemas/reaction-numbers.js';
import type { Want } from '../../records/schemas/want.js';
import { type Reached, wishedNumber } from '../../simulate/readings.js';

/** What a wish aims for, in the reaction number's SI unit. */
export interface Target {
  readonly wish: Wish;
  readonly step: number;
  readonly value: number;
  /** What nearly all layouts of this ball attain: its 2nd and 98th percentile. */
  readonly low: number;
  readonly high: number;
}

const QUANTILE_OF_STEP = [0.02, 0.25, 0.5, 0.75, 0.98] as const;

/**
 * Turns wishes into numbers this bowler can get from this ball on this lane: step 1 to 5 is a quantile of
 * what the attainable layouts do, so no more is promised than the ball can do.
 *
 * @param attainable  outcomes of a grid over all allowed layouts, at least one
 */
export function targetsOf(want: Want, attainable: readonly Reached[]): readonly Target[] {
  return WISHES.flatMap((wish) => {
    const step = want[wish];
    if (step === undefined) return [];
    const sorted = attainable.map((outcome) => wishedNumber(wish, outcome)).sort((a, b) => a - b);
    const quantile = (p: number): number => quantileSorted(sorted, p);
    return [
      { wish, step, value: quantile(QUANTILE_OF_STEP[step - 1]), low: quantile(0.02), high: quantile(0.98) },
    ];
  });
}
