import { expect } from 'vitest';

type Nested = number | readonly Nested[];

/** Every number within `tol` of the wanted one (absolute); NaN never is. */
export function expectNear(got: Nested, want: Nested, tol: number): void {
  const all = (x: Nested): number[] => (typeof x === 'number' ? [x] : x.flatMap(all));
  const [a, b] = [all(got), all(want)];
  expect(a.length).toBe(b.length);
  const off = a.map((value, i) => Math.abs(value - b[i]));
  expect(off.every((x) => x <= tol) ? 0 : off, `got ${a.join(' ')}; want ${b.join(' ')} ± ${tol}`).toBe(0);
}
