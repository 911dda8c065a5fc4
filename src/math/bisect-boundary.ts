/**
 * The last value on the way from `holds` to `end` for which a claim holds. Once the claim fails, it must fail all the rest of the way.
 *
 * @param holds     a value for which the claim holds
 * @param halvings  how often the way is halved: the result falls short by at most 2^−halvings of the way
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
