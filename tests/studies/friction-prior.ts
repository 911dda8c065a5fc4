import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { probit } from 'simple-statistics';
import type { Setting } from './friction.js';

/** A distribution normal in the logarithms of the numbers of a setting. */
export interface LogNormal {
  readonly median: readonly number[];
  readonly logDeviation: readonly number[];
  readonly correlation: readonly (readonly number[])[];
}

export const NAMES = ['oiled', 'dry', 'filmScale', 'finishExponent'] as const;

/**
 * What is known before any line is looked at: a Couette estimate and textbooks leave 0.01 to 0.05 on oil, 0.2 and a few
 * hundredths on dry boards; the film scale and the finish exponent are flarewise's own numbers, and wide.
 */
export const BEFORE: LogNormal = {
  median: [0.025, 0.2, 3.3, 0.12],
  logDeviation: [0.35, 0.12, 0.35, 0.35],
  correlation: [0, 1, 2, 3].map((i) => [0, 1, 2, 3].map((j) => (i === j ? 1 : 0))),
};

/** Draws settings from what is known before. */
export function drawSettings(count: number, seed: number): readonly Setting[] {
  const generator = xoroshiro128plus(seed);
  const normal = (): number => probit(Math.min(0.995, Math.max(0.005, uniformFloat64(generator))));
  return Array.from({ length: count }, () => {
    const [oiled, dry, filmScale, finishExponent] = BEFORE.median.map(
      (median, i) => median * Math.exp(BEFORE.logDeviation[i] * normal()),
    );
    return { oiled, dry, filmScale, finishExponent };
  });
}

/** The log-normal distribution with the mean and the covariance of weighed settings. */
export function fitLogNormal(settings: readonly Setting[], weights: readonly number[]): LogNormal {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const logs = settings.map((setting) => NAMES.map((name) => Math.log(setting[name])));
  const meanOf = (value: (row: readonly number[]) => number): number =>
    logs.reduce((sum, row, i) => sum + weights[i] * value(row), 0) / total;
  const means = NAMES.map((_, j) => meanOf((row) => row[j]));
  const covariance = NAMES.map((_, j) =>
    NAMES.map((__, k) => meanOf((row) => (row[j] - means[j]) * (row[k] - means[k]))),
  );
  const deviations = covariance.map((row, j) => Math.sqrt(row[j]));
  return {
    median: means.map(Math.exp),
    logDeviation: deviations,
    correlation: covariance.map((row, j) => row.map((value, k) => value / (deviations[j] * deviations[k]))),
  };
}

/** How many settings of equal weight the weighed ones are worth (Kish, Survey Sampling, 1965: from memory). */
export const effectiveCount = (weights: readonly number[]): number =>
  weights.reduce((sum, weight) => sum + weight, 0) ** 2 /
  weights.reduce((sum, weight) => sum + weight ** 2, 0);
