import { hypot } from '../../math/hypot.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';

/** How far apart two layouts must be to count as different choices: one of these, or a mix. */
const APART = { pinToPapIn: 0.75, drillingAngleDeg: 25, valAngleDeg: 15 };

/** Distance of two layouts; from 1 on they count as different choices. */
export const layoutsApart = (a: LayoutNumbers, b: LayoutNumbers): number =>
  hypot(
    (a.pinToPapIn - b.pinToPapIn) / APART.pinToPapIn,
    (a.drillingAngleDeg - b.drillingAngleDeg) / APART.drillingAngleDeg,
    (a.valAngleDeg - b.valAngleDeg) / APART.valAngleDeg,
  );

/** The first `count` of a list, best first, that lie at least so far apart: by default, that differ in more than a step or two. */
export function pickDiffering<T extends { readonly layout: LayoutNumbers }>(
  list: readonly T[],
  count: number,
  least = 1,
): T[] {
  const picked: T[] = [];
  for (const row of list) {
    if (picked.length === count) break;
    if (picked.every(({ layout }) => layoutsApart(row.layout, layout) >= least)) picked.push(row);
  }
  return picked;
}
