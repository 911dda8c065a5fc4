import { GREATEST_DENSITY } from '../ball/core/build.js';
import { type Ensemble, fitEnsemble } from '../ball/core/ensemble.js';
import { MISFITS, type Misfit } from '../ball/core/solve-core.js';
import type { OunceConvention } from '../ball/drill/static-weights.js';
import { GRAM_PER_CC, to } from '../base/units.js';
import type { PublishedField, PublishedNumber } from '../records/refusals/ball-refusals.js';
import { Refusal } from '../records/refusals/refusal.js';
import { type PublishedBall, publishedBallSchema } from '../records/schemas/ball.js';
import { nearestThatWorks } from './nearest-that-works.js';
import { familiesOf, publishedNumbers } from './published-numbers.js';

/** The multiples of `step` that may stand in place of a published number (`stride`: see `Trials`). */
interface FieldTrials {
  readonly field: PublishedField;
  readonly step: number;
  readonly stride: number;
}

const FIELDS: readonly FieldTrials[] = [
  { field: 'rgIn', step: 0.01, stride: 2 },
  { field: 'differentialIn', step: 0.001, stride: 4 },
  { field: 'intermediateDifferentialIn', step: 0.001, stride: 4 },
  { field: 'weightLb', step: 0.1, stride: 5 },
  { field: 'topWeightOz', step: 0.25, stride: 2 },
  { field: 'pinToCgIn', step: 0.25, stride: 2 },
];

/** Starting points tried for each replacement of a published number. */
const QUICK_TRIES = 250;

/** A value that would work in place of a published one. */
interface Remedy extends PublishedNumber {
  /** Its distance from the published number, as a share of the usual range of such numbers. */
  readonly change: number;
}

/**
 * The refusal of published numbers with which no core is found, `no-such-core`.
 *
 * For each number the nearest value that works with all the others is found by trying. The number with the smallest
 * change, relative to the usual range of such numbers, is named as the likely slip.
 *
 * @param ensembles  the fits that found nothing, with their reasons
 */
export function impossibleCore(
  ball: PublishedBall,
  ounce: OunceConvention,
  ensembles: readonly Ensemble[],
): Refusal {
  const remedies = FIELDS.flatMap((field) => remedyBy(field, ball, ounce)).sort(
    (a, b) => a.change - b.change,
  );
  const { field } = remedies[0] ?? FIELDS[0];
  return new Refusal([
    {
      code: 'no-such-core',
      params: {
        field: `ball.${field}`,
        given: { field, value: ball[field] },
        families: familiesOf(ball),
        why: mostFrequent(ensembles),
        densestGcc: to(GREATEST_DENSITY, GRAM_PER_CC),
        remedies: remedies.map(({ field, value }) => ({ field, value })),
      },
    },
  ]);
}

function remedyBy(trials: FieldTrials, ball: PublishedBall, ounce: OunceConvention): readonly Remedy[] {
  const { field } = trials;
  const given = ball[field];
  const { minValue, maxValue } = publishedBallSchema.shape[field];
  const range = { least: minValue ?? given, most: maxValue ?? given };
  const families = familiesOf(ball);
  const works = (value: number): boolean =>
    families.some((coreShape) => hasCore({ ...ball, [field]: value, coreShape }, ounce));
  const value = nearestThatWorks(given, { ...trials, ...range }, works);
  return value === null
    ? []
    : [{ field, value, change: Math.abs(value - given) / (range.most - range.least) }];
}

/** Whether a quick look finds a core with a ball's numbers, as its record allows them. */
const hasCore = (ball: PublishedBall, ounce: OunceConvention): boolean =>
  publishedBallSchema.safeParse(ball).success &&
  fitEnsemble(publishedNumbers(ball, ounce), 1, QUICK_TRIES).bodies.length > 0;

function mostFrequent(ensembles: readonly Ensemble[]): Misfit {
  const counts = MISFITS.map((why) => ({
    why,
    count: ensembles.reduce((sum, { misfits }) => sum + (misfits[why] ?? 0), 0),
  }));
  return counts.reduce((a, b) => (b.count > a.count ? b : a)).why;
}
