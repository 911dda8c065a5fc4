import { type Ensemble, fitEnsemble } from '../ball/core/ensemble.js';
import { MISFITS, type Misfit } from '../ball/core/solve-core.js';
import type { OunceConvention } from '../ball/drill/static-weights.js';
import { InputError } from '../base/errors.js';
import { type PublishedBall, publishedBallSchema } from '../records/schemas/ball.js';
import { CORE_FAMILIES, type CoreFamily } from '../records/schemas/core-families.js';
import { nearestThatWorks } from './nearest-that-works.js';
import { familiesOf, publishedNumbers } from './published-numbers.js';

const WHY: Record<Misfit, string> = {
  'filler-too-light': 'the filler around the core would have to be lighter than any that is tried',
  'core-too-big': 'the core would stick out into the cover',
  'core-too-dense': 'the core would have to be denser than 3.8 g/cc',
  'low-axis-off-pin': 'the low-RG axis would leave the pin',
};

/** Said last: numbers of a real ball may be beyond the builds that are tried. */
const IF_RIGHT = 'If all numbers are as published, this ball is built in a way that flarewise does not try.';

/** A published number, with the multiples of `step` that may stand in its place (`stride`: see `Trials`). */
interface PublishedField {
  readonly field: NumberField;
  readonly name: string;
  readonly unit: string;
  readonly step: number;
  readonly stride: number;
  readonly digits: number;
}

type NumberField =
  | 'rgIn'
  | 'differentialIn'
  | 'intermediateDifferentialIn'
  | 'weightLb'
  | 'topWeightOz'
  | 'pinToCgIn';

const FIELDS: readonly PublishedField[] = [
  { field: 'rgIn', name: 'RG', unit: 'in', step: 0.01, stride: 2, digits: 2 },
  { field: 'differentialIn', name: 'differential', unit: 'in', step: 0.001, stride: 4, digits: 3 },
  {
    field: 'intermediateDifferentialIn',
    name: 'intermediate differential',
    unit: 'in',
    step: 0.001,
    stride: 4,
    digits: 3,
  },
  { field: 'weightLb', name: 'weight', unit: 'lb', step: 0.1, stride: 5, digits: 1 },
  { field: 'topWeightOz', name: 'top weight', unit: 'oz', step: 0.25, stride: 2, digits: 2 },
  { field: 'pinToCgIn', name: 'pin to CG', unit: 'in', step: 0.25, stride: 2, digits: 2 },
];

/** Starting points tried for each value in place of a published one. */
const QUICK_TRIES = 250;

/** A value that would work in place of a published one. */
interface Remedy extends PublishedField {
  readonly value: number;
  /** How far it lies from the published one, as a share of the range such numbers come in. */
  readonly change: number;
}

/**
 * The error for published numbers with which no core is found.
 *
 * For each number the nearest value that works with all the others is found by trying; the one that has the least
 * to change, measured against the range such numbers come in, is named as the likely slip.
 *
 * @param ensembles  the fits that found nothing, with their reasons
 */
export function impossibleCore(
  ball: PublishedBall,
  ounce: OunceConvention,
  ensembles: readonly Ensemble[],
): InputError {
  const remedies = FIELDS.flatMap((field) => remedyBy(field, ball, ounce)).sort(
    (a, b) => a.change - b.change,
  );
  const { field, name, unit } = remedies[0] ?? FIELDS[0];
  const others =
    remedies.length > 1 ? ` The ${name} has the least to change: look there for a slip first.` : '';
  return new InputError('no-such-core', {
    field: `ball.${field}`,
    rule: `must go with the ball's other numbers in ${nameFamilies(familiesOf(ball))} core`,
    got: `${ball[field]} ${unit}, with which ${WHY[mostFrequent(ensembles)]}`,
    hint:
      remedies.length > 0
        ? `Nearest that works, the others kept: ${remedies.map(wordRemedy).join('; or ')}.${others} ${IF_RIGHT}`
        : `Changing any one number does not help: check them all for a slip. ${IF_RIGHT}`,
  });
}

const nameFamilies = ([first, ...others]: readonly CoreFamily[]): string =>
  [CORE_FAMILIES[first].name, ...others].join(' or ');

const wordRemedy = ({ name, value, digits, unit }: Remedy): string =>
  `${name} ${value.toFixed(digits)} ${unit}`;

function remedyBy(field: PublishedField, ball: PublishedBall, ounce: OunceConvention): readonly Remedy[] {
  const given = ball[field.field];
  const { minValue, maxValue } = publishedBallSchema.shape[field.field];
  const range = { least: minValue ?? given, most: maxValue ?? given };
  const families = familiesOf(ball);
  const works = (value: number): boolean =>
    families.some((coreShape) => hasCore({ ...ball, [field.field]: value, coreShape }, ounce));
  const value = nearestThatWorks(given, { ...field, ...range }, works);
  return value === null
    ? []
    : [{ ...field, value, change: Math.abs(value - given) / (range.most - range.least) }];
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
