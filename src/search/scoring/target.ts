import { quantileSorted } from 'simple-statistics';
import type { Reaction } from '../../motion/reaction/reaction.js';
import type { WishReading } from '../../records/answers/statements/params.js';
import type { Want } from '../../records/schemas/want.js';
import type { Outcome } from '../../simulate/simulator.js';

/** As much of an outcome as a score looks at, whichever engine it came from. */
export interface Reached {
  readonly shot: Outcome['shot'];
  readonly reaction: Pick<Reaction, 'hookStart' | 'sharpness' | 'totalHook' | 'entryAngle'>;
}

/** The three wishes, and the reaction number each one is about. */
export const WISHES = {
  hookStart: (o: Reached): number => o.reaction.hookStart,
  sharpness: (o: Reached): number => o.reaction.sharpness,
  totalHook: (o: Reached): number => o.reaction.totalHook,
} as const;

export type Wish = keyof typeof WISHES;

/** The reaction number of an answer that each wish is about. */
export const READING_OF: Readonly<Record<Wish, WishReading>> = {
  hookStart: 'hookStartFt',
  sharpness: 'sharpnessDegPerFt',
  totalHook: 'totalHookBoards',
};

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
 * what the attainable layouts do, so nobody is promised what the ball cannot do.
 *
 * @param attainable  outcomes of a grid over all allowed layouts, at least one
 */
export function targetsOf(want: Want, attainable: readonly Outcome[]): readonly Target[] {
  return (Object.keys(WISHES) as Wish[]).flatMap((wish) => {
    const step = want[wish];
    if (step === undefined) return [];
    const sorted = attainable.map(WISHES[wish]).sort((a, b) => a - b);
    const quantile = (p: number): number => quantileSorted(sorted, p);
    return [
      { wish, step, value: quantile(QUANTILE_OF_STEP[step - 1]), low: quantile(0.02), high: quantile(0.98) },
    ];
  });
}
