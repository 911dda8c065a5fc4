/** Values to try in place of a number: whole multiples of `step` in a range, at first `stride` steps apart. */
interface Trials {
  readonly step: number;
  readonly stride: number;
  readonly least: number;
  readonly most: number;
}

/**
 * Among the values that may be tried, the working one nearest to a value that does not work; null when none works.
 *
 * Searches outward on both sides in strides, then back over the steps of the last stride. A range of working values
 * narrower than a stride may be overlooked.
 */
export function nearestThatWorks(
  from: number,
  { step, stride, least, most }: Trials,
  works: (value: number) => boolean,
): number | null {
  const start = Math.round(from / step);
  const at = (steps: number): number => Number((step * steps).toFixed(DIGITS));
  const ends: Record<Side, number> = { [-1]: Math.ceil(least / step), 1: Math.floor(most / step) };
  const reach = (side: Side): number => side * (ends[side] - start);
  const firstInStride = (side: Side, n: number): number | null => {
    const last = Math.min(n, reach(side));
    if (last <= n - stride || !works(at(start + side * last))) return null;
    for (let m = n - stride + 1; m < last; m++) if (works(at(start + side * m))) return at(start + side * m);
    return at(start + side * last);
  };
  for (let n = stride; n - stride < Math.max(reach(1), reach(-1)); n += stride) {
    const found = SIDES.map((side) => firstInStride(side, n)).filter((value) => value !== null);
    if (found.length > 0) return found.reduce((a, b) => (Math.abs(b - from) < Math.abs(a - from) ? b : a));
  }
  return null;
}

type Side = 1 | -1;
const SIDES: readonly Side[] = [1, -1];
const DIGITS = 6; // of a multiple of a step that is written in decimals
