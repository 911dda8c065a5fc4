/** One number that differs from world to world. */
export interface VariedNumber {
  /** World by world. */
  readonly values: readonly number[];
  /** Standard deviation of the part of it that can be known over that of all of it, 0 to 1. */
  readonly knownShare: number;
}

/** Smooth functions of some numbers, over worlds; the mean of each is 0. */
export interface SmoothColumns {
  /** Orthonormal. */
  readonly fitted: readonly Float64Array[];
  /** What is expected of each once only the part that can be known is. */
  readonly known: readonly Float64Array[];
  /** Of a fit of all columns and a mean: how far each world's own value moves its fit. */
  readonly leverage: Float64Array;
}

/** What is left of a column once the others are taken out, as a share of it, below which it says nothing new. */
const NOTHING_NEW = 1e-6;

/**
 * The numbers themselves, their squares, and for a pair the product; of a number that does not differ nothing.
 *
 * As Hermite polynomials of the standardised numbers: where the part that can be known and the rest are normal, the expectation of the
 * polynomial of degree k, given that part, is the known share to the power k times the same polynomial of it (Mehler; Abramowitz &
 * Stegun, 22.5.18 and 22.9.17). Orthogonalised by modified Gram–Schmidt (Golub & Van Loan, Matrix Computations, §5.2.8).
 */
export function smoothColumns(numbers: readonly VariedNumber[]): SmoothColumns {
  const count = numbers[0]?.values.length ?? 0;
  const standard = numbers.flatMap(standardised);
  const fitted: Float64Array[] = [];
  const known: Float64Array[] = [];
  const leverage = new Float64Array(count).fill(1 / count);
  const add = (column: Float64Array, share: number): void => {
    const own = withoutMean(column);
    const expected = own.map((each) => share * each);
    const before = dotOf(own, own);
    for (let k = 0; k < fitted.length; k++) {
      const part = dotOf(own, fitted[k]);
      addTo(own, -part, fitted[k]);
      addTo(expected, -part, known[k]);
    }
    const left = Math.sqrt(dotOf(own, own));
    if (!(left > NOTHING_NEW * Math.sqrt(before))) return;
    for (let i = 0; i < count; i++) {
      own[i] /= left;
      expected[i] /= left;
      leverage[i] += own[i] ** 2;
    }
    fitted.push(own);
    known.push(expected);
  };
  for (const { z, knownShare } of standard) add(z, knownShare);
  for (const { z, knownShare } of standard) add(productOf(z, z), knownShare ** 2);
  const [a, b] = standard;
  if (a && b && standard.length === 2) add(productOf(a.z, b.z), a.knownShare * b.knownShare);
  return { fitted, known, leverage };
}

/** A number less its mean, over its standard deviation; none where it does not differ. */
function standardised({ values, knownShare }: VariedNumber): { z: Float64Array; knownShare: number }[] {
  const z = withoutMean(Float64Array.from(values));
  const deviation = Math.sqrt(dotOf(z, z) / (z.length - 1));
  if (!(deviation > 0)) return [];
  for (let i = 0; i < z.length; i++) z[i] /= deviation;
  return [{ z, knownShare }];
}

function withoutMean(column: Float64Array): Float64Array {
  let sum = 0;
  for (let i = 0; i < column.length; i++) sum += column[i];
  const mean = sum / column.length;
  return column.map((each) => each - mean);
}

const productOf = (a: Float64Array, b: Float64Array): Float64Array => a.map((each, i) => each * b[i]);

export function dotOf(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
}

/** Adds a multiple of a column to another. */
export function addTo(sum: Float64Array, times: number, column: ArrayLike<number>): void {
  for (let i = 0; i < sum.length; i++) sum[i] += times * column[i];
}
