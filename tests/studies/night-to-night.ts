import type { CoreFitter } from '../../src/prepare/fit-cores.js';
import { ASKED, blindCase, meanOfShots } from './blind-case.js';
import { trueNights } from './blind-logs.js';
import { random } from './random.js';

/** Nights of one bowler that are compared, and of how many at least most shots must stay on the lane. */
const NIGHTS = 6;
const LEAST = 4;

/** Apart from what else is drawn for a place. */
const SEED = 77;

/**
 * How far nights of one bowler with one ball and one aim lie apart, as variances in the order of `ASKED`: what no log of other nights can
 * foretell. Null where the bowler plays no line that most shots stay on.
 */
export function nightToNight(place: number, fitter?: CoreFitter): readonly number[] | null {
  const { hidden, logged, bowler, lane, here, truth } = blindCase(place, {}, fitter);
  if (!truth) return null;
  const of = random(1000 * SEED + place);
  const nightOf = trueNights(hidden, logged, bowler, lane, {});
  const means = Array.from({ length: NIGHTS }, () => {
    const night = nightOf(of);
    return meanOfShots(of, { ...night, roll: (shots) => night.roll(shots, here.aim) });
  }).filter((mean) => mean !== null);
  if (means.length < LEAST) return null;
  return ASKED.map((_, i) => {
    const middle = means.reduce((sum, mean) => sum + mean[i], 0) / means.length;
    return means.reduce((sum, mean) => sum + (mean[i] - middle) ** 2, 0) / (means.length - 1);
  });
}
