import type { LayoutNumbers } from '../records/layout-text.js';

/** How far two layouts must lie apart to count as different choices: one of these, or a mix. */
const APART = { pinToPapIn: 0.75, drillingAngleDeg: 25, valAngleDeg: 15 };

/** The first `count` of a list, best first, that differ from one another in more than a step or two. */
export function pickDiffering<T extends { readonly layout: LayoutNumbers }>(
  list: readonly T[],
  count: number,
): T[] {
  const picked: T[] = [];
  for (const row of list) {
    if (picked.length === count) break;
    const differs = picked.every(
      ({ layout }) =>
        Math.hypot(
          (row.layout.pinToPapIn - layout.pinToPapIn) / APART.pinToPapIn,
          (row.layout.drillingAngleDeg - layout.drillingAngleDeg) / APART.drillingAngleDeg,
          (row.layout.valAngleDeg - layout.valAngleDeg) / APART.valAngleDeg,
        ) >= 1,
    );
    if (differs) picked.push(row);
  }
  return picked;
}
