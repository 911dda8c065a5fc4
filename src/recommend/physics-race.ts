import type { LayoutNumbers } from '../records/layout-text.js';
import { keyOf } from './candidates.js';
import { type Expects, expectation } from './expectation.js';
import type { NominalShot, NominalShots } from './nominal-shots.js';
import { pairedScores } from './paired-scores.js';
import { pickDiffering } from './pick-differing.js';
import type { Survey } from './survey.js';
import type { WorldShots } from './world-shots.js';

/** Worlds that those still in the race have met after a round, and how many of the best stay. */
const ROUNDS = [
  { worlds: 4, keep: 30 },
  { worlds: 12, keep: 12 },
  { worlds: 24, keep: 6 },
] as const;

/** Besides, so many that differ stay, for an answer shows layouts that do. */
const DIFFERING = 6;

/** After the race: batches of new layouts, about so far apart, where most is expected, and the worlds they meet. */
const BATCHES = 2;
const BATCH = { layouts: 8, apart: 0.2, worlds: 12 };

/** The best then meet so many. */
const BEST = { layouts: 6, worlds: 24 };

/** Layouts that start the race. */
export const STARTERS = 100;

/** Most shots in worlds that a race takes, but for a few; for the progress shown. */
export const RACE_SHOTS = STARTERS * 4 + 36 * 8 + 18 * 12 + BATCHES * (8 * 12 + 6 * 12);

/**
 * Races layouts by physics in plausible worlds, few for the hopeless and more for the close, then tries what lies
 * between and beside the best at marking resolution.
 *
 * @param starters  likely ones, best first
 * @param layouts   all that may be marked
 * @param survey    what the regression expects of them; null where it was not asked
 * @returns what is now expected of any layout; to be relied on near those that were raced
 */
export async function raceByPhysics(
  starters: readonly NominalShot[],
  layouts: readonly LayoutNumbers[],
  { rolled, inWorlds }: { readonly rolled: NominalShots; readonly inWorlds: WorldShots },
  survey: Survey | null,
  onDone: (count: number) => void,
): Promise<Expects> {
  let running = starters;
  for (const { worlds, keep } of ROUNDS) {
    await inWorlds.roll(running, worlds, onDone);
    await survey?.look(running.map(({ layout }) => layout));
    const { rows } = pairedScores(inWorlds.known(), survey?.scores);
    const lacks = new Map(rows.map(({ layout, value }) => [keyOf(layout), value]));
    const lack = ({ layout }: NominalShot): number => lacks.get(keyOf(layout))!;
    const order = [...running].sort((a, b) => lack(b) - lack(a));
    running = [...new Set([...order.slice(0, keep), ...pickDiffering(order, DIFFERING)])];
  }
  const updated = async (): Promise<Expects> => {
    await survey?.look(inWorlds.known().map(({ layout }) => layout));
    return expectation(inWorlds, survey);
  };
  let expects = await updated();
  for (let i = 0; i < BATCHES; i++) {
    const fresh = bestFirst(layouts, expects).filter(
      ({ layout }) => !inWorlds.get(layout) && !rolled.isRejected(layout),
    );
    const batch = pickDiffering(fresh, BATCH.layouts, BATCH.apart).map(({ layout }) => layout);
    await rolled.roll(batch);
    const allowed = batch.map((layout) => rolled.get(layout)).filter((shot) => shot !== undefined);
    await inWorlds.roll(allowed, BATCH.worlds, onDone);
    expects = await updated();
    const raced = inWorlds.known().map(({ layout }) => layout);
    const best = bestFirst(raced, expects).slice(0, BEST.layouts);
    await inWorlds.roll(
      best.map(({ layout }) => rolled.get(layout)).filter((shot) => shot !== undefined),
      BEST.worlds,
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
