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
  shots: RaceShots,
  survey: Survey | null,
  size: RaceSize,
  onDone: (count: number) => void,
): Promise<Expects> {
  await runRounds(starters, shots.cache, survey, size, onDone);
  return tryBesideBest(layouts, shots, survey, size, onDone);
}

/** The shots that a race rolls, and those it finds rolled. */
interface RaceShots {
  /** In the nominal world. */
  readonly rolled: Pick<NominalShots, 'roll' | 'get' | 'isRejected'>;
  /** In all others. */
  readonly cache: ScoredCache;
}

/** Rounds in more and more worlds, from each of which the better layouts go on, and the best that differ. */
async function runRounds(
  starters: readonly NominalShot[],
  cache: ScoredCache,
  survey: Survey | null,
  { rounds, differing }: RaceSize,
  onDone: (count: number) => void,
): Promise<void> {
  let running = starters;
  for (const { worlds, keep } of rounds) {
    await cache.roll(running, worlds, onDone);
    await survey?.look(running.map(({ layout }) => layout));
    const { rows } = controlVariates(cache.known(), survey?.scores);
    const differences = new Map(rows.map(({ layout, value }) => [keyOf(layout), value]));
    const standing = ({ layout }: NominalShot): number => differences.get(keyOf(layout))!;
    const order = [...running].sort((a, b) => standing(b) - standing(a));
    running = [...new Set([...order.slice(0, keep), ...pickDiffering(order, differing)])];
  }
}

/** Rolls batches of new layouts that are expected to be good, and each time the best of all in more worlds. @returns what is then expected */
async function tryBesideBest(
  layouts: readonly LayoutNumbers[],
  { rolled, cache }: RaceShots,
  survey: Survey | null,
  { batches, batch, best }: RaceSize,
  onDone: (count: number) => void,
): Promise<Expects> {
  const known = (): LayoutNumbers[] => cache.known().map(({ layout }) => layout);
  const updated = async (): Promise<Expects> => {
    await survey?.look(known());
    return expectation(cache, survey);
  };
  const rollInWorlds = (some: readonly LayoutNumbers[], worlds: number): Promise<void> =>
    cache.roll(
      some.map((layout) => rolled.get(layout)).filter((shot) => shot !== undefined),
      worlds,
      onDone,
    );
  let expects = await updated();
  for (let i = 0; i < batches; i++) {
    const fresh = bestFirst(layouts, expects).filter(
      ({ layout }) => !cache.get(layout) && !rolled.isRejected(layout),
    );
    const promising = pickDiffering(fresh, batch.layouts, batch.apart).map(({ layout }) => layout);
    await rolled.roll(promising);
    await rollInWorlds(promising, batch.worlds);
    expects = await updated();
    const leaders = bestFirst(known(), expects).slice(0, best.layouts);
    await rollInWorlds(
      leaders.map(({ layout }) => layout),
      best.worlds,
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
