import type { RaceSize } from '../prepare/budget.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { keyOf } from './candidates/candidates.js';
import type { NominalShot, NominalShots } from './candidates/nominal-shots.js';
import { pickDiffering } from './candidates/pick-differing.js';
import { type Expects, expectation } from './expectation.js';
import { pairedScores } from './scoring/paired-scores.js';
import type { Survey } from './surrogate/survey.js';
import type { WorldShots } from './world-shots.js';

/** Most shots in worlds that a race takes, but for a few; for the progress shown. */
export function raceShots({ starters, rounds, differing, batches, batch, best }: RaceSize): number {
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
 * Races layouts by physics in plausible worlds, few for the hopeless and more for the close, then tries what lies
 * between and beside the best at marking resolution.
 *
 * @param starters  likely ones, best first
 * @param layouts   all that may be marked
 * @param survey    what the regression expects of them; null where it was not asked
 * @param size      how many layouts are raced, and in how many worlds
 * @returns what is now expected of any layout; to be relied on near those that were raced
 */
export async function raceByPhysics(
  starters: readonly NominalShot[],
  layouts: readonly LayoutNumbers[],
  { rolled, inWorlds }: { readonly rolled: NominalShots; readonly inWorlds: WorldShots },
  survey: Survey | null,
  { rounds, differing, batches, batch: tried, best: leading }: RaceSize,
  onDone: (count: number) => void,
): Promise<Expects> {
  let running = starters;
  for (const { worlds, keep } of rounds) {
    await inWorlds.roll(running, worlds, onDone);
    await survey?.look(running.map(({ layout }) => layout));
    const { rows } = pairedScores(inWorlds.known(), survey?.scores);
    const lacks = new Map(rows.map(({ layout, value }) => [keyOf(layout), value]));
    const lack = ({ layout }: NominalShot): number => lacks.get(keyOf(layout))!;
    const order = [...running].sort((a, b) => lack(b) - lack(a));
    running = [...new Set([...order.slice(0, keep), ...pickDiffering(order, differing)])];
  }
  const updated = async (): Promise<Expects> => {
    await survey?.look(inWorlds.known().map(({ layout }) => layout));
    return expectation(inWorlds, survey);
  };
  let expects = await updated();
  for (let i = 0; i < batches; i++) {
    const fresh = bestFirst(layouts, expects).filter(
      ({ layout }) => !inWorlds.get(layout) && !rolled.isRejected(layout),
    );
    const batch = pickDiffering(fresh, tried.layouts, tried.apart).map(({ layout }) => layout);
    await rolled.roll(batch);
    const allowed = batch.map((layout) => rolled.get(layout)).filter((shot) => shot !== undefined);
    await inWorlds.roll(allowed, tried.worlds, onDone);
    expects = await updated();
    const raced = inWorlds.known().map(({ layout }) => layout);
    const best = bestFirst(raced, expects).slice(0, leading.layouts);
    await inWorlds.roll(
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
    .sort((a, b) => b.expected - a.expected || (keyOf(a.layout) < keyOf(b.layout) ? -1 : 1));
