/**
 * The last value on the way from `holds` to `end` for which a claim holds that, once lost, stays lost.
 *
 * @param holds     a value for which it does
 * @param halvings  how often the way is halved: the result is short of the truth by 2^−halvings of it at most
 */
export function bisectBoundary(
  claim: (x: number) => boolean,
  holds: number,
  end: number,
  halvings: number,
): number {
  if (claim(end)) return end;
  let [yes, no] = [holds, end];
  for (let i = 0; i < halvings; i++) {
    const middle = (yes + no) / 2;
    if (claim(middle)) yes = middle;
    else no = middle;
  }
  return yes;
}
