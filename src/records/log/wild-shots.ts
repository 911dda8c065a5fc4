import { medianAbsoluteDeviation, medianSorted } from 'simple-statistics';
import type { LogRemark } from '../answers/statements/log-remarks.js';
import { type Night, READING_IDS } from '../schemas/shot-log.js';
import { readingError } from './readings.js';

/** With fewer shots it is not known how they scatter. */
const LEAST_SHOTS = 5;

/** Normal deviations of the median absolute deviation: 1 / Φ⁻¹(3/4) (Rousseeuw & Croux, JASA 88, 1273, 1993). */
const TO_DEVIATION = 1.4826;

/** From this many robust deviations on a value is an outlier (Iglewicz & Hoaglin, How to Detect and Handle Outliers, 1993; from memory). */
const WILD = 3.5;

/**
 * Shots of a night that lie far from the others, each by the reading in which it lies farthest.
 *
 * By the distance from the median over the median absolute deviation, which a wild shot hardly moves (Huber, Robust Statistics, 1981,
 * sect. 5.1); that a reading may be off counts as scatter too. Such a shot stays in the log.
 *
 * @param first  number of the night's first shot
 */
export function wildShots(night: Night, first: number): readonly WildShot[] {
  const farthest = new Map<number, { readonly params: WildShot['params']; readonly by: number }>();
  for (const reading of READING_IDS) {
    const taken = night.shots.flatMap((shot, i) => {
      const value = shot[reading];
      return value === undefined ? [] : [{ i, value }];
    });
    if (taken.length < LEAST_SHOTS) continue;
    const values = taken.map(({ value }) => value).sort((a, b) => a - b);
    const median = medianSorted(values);
    const scatter = TO_DEVIATION * medianAbsoluteDeviation(values);
    for (const { i, value } of taken) {
      const deviation = Math.max(scatter, readingError(reading, night.shots[i], night));
      const by = Math.abs(value - median) / deviation;
      if (by > WILD && by > (farthest.get(i)?.by ?? 0))
        farthest.set(i, { by, params: { shot: first + i, reading, value, median, shots: taken.length } });
    }
  }
  return [...farthest.values()]
    .sort((a, b) => a.params.shot - b.params.shot)
    .map(({ params }) => ({ code: 'wild-shot', params }));
}

type WildShot = Extract<LogRemark, { readonly code: 'wild-shot' }>;
