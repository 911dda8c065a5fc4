import type { RaceSize } from '../prepare/budget.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { byKey, keyOf } from './candidates/candidates.js';
import type { NominalShot, NominalShots } from './candidates/nominal-shots.js';
import { pickDiffering } from './candidates/pick-differing.js';
import { type Expects, expectation } from './expectation.js';
import type { ScoredCache } from './outcome-cache.js';
import { controlVariates } from './scoring/control-variates.js';
import type { Survey } from './surrogate/survey.js';

/** Nearly the greatest number of shots in worlds that this takes, for the progress shown. */
export function halvingShots({ starters, rounds, differing, batches, batch, best }: RaceSize): number {
  let running = starters;
  let met = 0;
  let shots = 0;
  for (const { worlds, keep } of rounds) {
    shots += running * (worlds - met);
    met = worlds;
    running = Math.min(running, keep + differing);
  }
  return shots + batches * (batch.layouts * batch.worlds + best.layouts * (best.worlds - batch.worlds));
}

/**
 * Successive halving by physics: poor layouts meet few plausible worlds, close ones more. Then layouts between and beside the best
 * are tried, at marking resolution.
 *
 * @param starters  promising layouts, best first
 * @param layouts   all that may be marked
 * @param survey    scores by the regression, or null
 * @param size      how many layouts are raced, and in how many worlds
 * @returns the expected score of any layout, reliable near those that were rolled
 */
export async function halveByPhysics(
  starters: readonly NominalShot[],
  layouts: readonly LayoutNumbers[],
  {
    rolled,
    cache,
  }: { readonly rolled: Pick<NominalShots, 'roll' | 'get' | 'isRejected'>; readonly cache: ScoredCache },
  survey: Survey | null,
  { rounds, differing, batches, batch: tried, best: leading }: RaceSize,
  onDone: (count: number) => void,
): Promise<Expects> {
  let running = starters;
  for (const { worlds, keep } of rounds) {
    await cache.roll(running, worlds, onDone);
    await survey?.look(running.map(({ layout }) => layout));
    const { rows } = controlVariates(cache.known(), survey?.scores);
    const lacks = new Map(rows.map(({ layout, value }) => [keyOf(layout), value]));
    const lack = ({ layout }: NominalShot): number => lacks.get(keyOf(layout))!;
    const order = [...running].sort((a, b) => lack(b) - lack(a));
    running = [...new Set([...order.slice(0, keep), ...pickDiffering(order, differing)])];
  }
  const updated = async (): Promise<Expects> => {
    await survey?.look(cache.known().map(({ layout }) => layout));
    return expectation(cache, survey);
  };
  let expects = await updated();
  for (let i = 0; i < batches; i++) {
    const fresh = bestFirst(layouts, expects).filter(
      ({ layout }) => !cache.get(layout) && !rolled.isRejected(layout),
    );
    const batch = pickDiffering(fresh, tried.layouts, tried.apart).map(({ layout }) => layout);
    await rolled.roll(batch);
    const allowed = batch.map((layout) => rolled.get(layout)).filter((shot) => shot !== undefined);
    await cache.roll(allowed, tried.worlds, onDone);
    expects = await updated();
    const scored = cache.known().map(({ layout }) => layout);
    const best = bestFirst(scored, expects).slice(0, leading.layouts);
    await cache.roll(
      best.map(({ layout }) => rolled.get(layout)).filter((shot) => shot !== undefined),
      leading.worlds,
      onDone,
    );
    expects = await updated();
  }
  return expects;
}

/** Layouts with what is expected of them, most first. */
export const bestFirst = (
  layouts: readonly LayoutNumbers[],
  expects: Expects,
): readonly { readonly layout: LayoutNumbers; readonly expected: number }[] =>
  layouts
    .map((layout) => ({ layout, expected: expects(layout) }))
    .sort((a, b) => b.expected - a.expected || byKey(a, b));
