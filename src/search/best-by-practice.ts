import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { byKey } from './candidates/candidates.js';
import type { NominalShot, NominalShots } from './candidates/nominal-shots.js';
import { layoutsApart } from './candidates/pick-differing.js';
import type { ProblemBeliefs } from './voices/problem-beliefs.js';

/** How many layouts are rolled at a time to find one that may be drilled, and how often. */
const TRIED_AT_A_TIME = 6;
const TIMES_TRIED = 20;

/**
 * The best by practice alone that may be drilled; among equals the one nearest to the usual middle layout. Where holes or the lane bar all that
 * practice likes most, it is the best of those rolled for the grid.
 *
 * @param markable  all layouts that may be marked
 * @param rolled    shots in the nominal world so far; more are rolled
 */
export async function bestByPractice(
  markable: readonly LayoutNumbers[],
  { byPractice }: ProblemBeliefs,
  rolled: NominalShots,
): Promise<NominalShot | null> {
  const order = markable
    .map((layout) => ({ layout, score: byPractice(layout), apart: layoutsApart(layout, MIDDLE_LAYOUT) }))
    .sort((a, b) => b.score - a.score || a.apart - b.apart || byKey(a, b))
    .map(({ layout }) => layout);
  const bestOf = (some: readonly LayoutNumbers[]): NominalShot | undefined =>
    some.map((layout) => rolled.get(layout)).find((shot) => shot !== undefined);
  for (let time = 0; time < TIMES_TRIED; time++) {
    const some = order.slice(TRIED_AT_A_TIME * time, TRIED_AT_A_TIME * (time + 1));
    await rolled.roll(some);
    const best = bestOf(some);
    if (best) return best;
  }
  return bestOf(order) ?? null;
}
