import type { LayoutNumbers } from '../records/text/layout-text.js';
import { keyOf } from './candidates/candidates.js';
import type { NominalShot, NominalShots } from './candidates/nominal-shots.js';
import { pickDiffering } from './candidates/pick-differing.js';
import { type Expects, expectation } from './expectation.js';
import { pairedScores } from './scoring/paired-scores.js';
import type { Survey } from './surrogate/survey.js';
import type { WorldShots } from './world-shots.js';

/** How many layouts a race takes up, and in how many worlds. */
interface Size {
  /** Layouts that start. */
  readonly starters: number;
  /** Worlds that those still in the race have met after a round, and how many of the best stay. */
  readonly rounds: readonly { readonly worlds: number; readonly keep: number }[];
  /** Besides, so many that differ stay, for an answer shows layouts that do. */
  readonly differing: number;
  /** After the race: batches of new layouts, about so far apart, where most is expected, and the worlds they meet. */
  readonly batches: number;
  readonly batch: { readonly layouts: number; readonly apart: number; readonly worlds: number };
  /** The best then meet so many. */
  readonly best: { readonly layouts: number; readonly worlds: number };
}

/** Where the regression has named the likely ones, few need be tried; physics alone has to look around. */
const SIZES: Readonly<Record<'surveyed' | 'alone', Size>> = {
  surveyed: {
    starters: 40,
    rounds: [
      { worlds: 4, keep: 14 },
      { worlds: 12, keep: 8 },
      { worlds: 24, keep: 5 },
    ],
    differing: 5,
    batches: 1,
    batch: { layouts: 6, apart: 0.2, worlds: 12 },
    best: { layouts: 5, worlds: 24 },
  },
  alone: {
    starters: 100,
    rounds: [
      { worlds: 4, keep: 30 },
      { worlds: 12, keep: 12 },
      { worlds: 24, keep: 6 },
    ],
    differing: 6,
    batches: 2,
    batch: { layouts: 8, apart: 0.2, worlds: 12 },
    best: { layouts: 6, worlds: 24 },
  },
};

export const raceSize = (isSurveyed: boolean): Size => SIZES[isSurveyed ? 'surveyed' : 'alone'];

/** Most shots in worlds that a race takes, but for a few; for the progress shown. */
export function raceShots({ starters, rounds, differing, batches, batch, best }: Size): number {
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
 * @returns what is now expected of any layout; to be relied on near those that were raced
 */
export async function raceByPhysics(
  starters: readonly NominalShot[],
  layouts: readonly LayoutNumbers[],
  { rolled, inWorlds }: { readonly rolled: NominalShots; readonly inWorlds: WorldShots },
  survey: Survey | null,
  onDone: (count: number) => void,
): Promise<Expects> {
  const { rounds, differing, batches, batch: tried, best: leading } = raceSize(survey !== null);
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
