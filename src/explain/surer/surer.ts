import { meanSimple } from 'simple-statistics';
import { fromKeys } from '../../base/from-keys.js';
import type { SurerAnswer } from '../../records/answers/answer.js';
import { WISHED_IDS } from '../../records/schemas/reaction-numbers.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import { keyOf } from '../../search/candidates/candidates.js';
import type { VoicesResult } from '../../search/search.js';
import type { RecommendInputs, Setting } from '../../simulate/setting.js';
import { alternativesTo } from './alternatives.js';
import { coreNumbers } from './core-numbers.js';
import { aboutMean, localMeans, meanOf } from './local-means.js';
import { variedUnknowns } from './unknowns.js';
import { type ValueOfKnowing, valueOfKnowing } from './value-of-knowing.js';
import { type WorldsAlike, worldsAlike } from './worlds-alike.js';

/** Differences of score below this do not matter: no other layout would be recommended for less. */
const NO_MATTER = 0.5;

/** Least chance of another recommendation that is worth reporting. */
const WORTH_SAYING = 0.05;

/** Least number of worlds for a fit. */
const LEAST_WORLDS = 32;

/**
 * What would make a recommendation more certain: for each unknown, the chance that knowing it would change the first layout, and
 * the expected gain in score. Those worth reporting, in order of chance.
 *
 * It uses only the shots that were rolled for the ranking, so only layouts that met all worlds can replace the first. With more
 * layouts, chance and gain could only be greater.
 *
 * @param ranked  layouts that met every world and may be drilled, in order
 */
export function surer(
  ranked: readonly LayoutNumbers[],
  { weighed, practice, beliefs, byBoth }: VoicesResult,
  inputs: RecommendInputs,
  { ball, problem }: Setting,
): SurerAnswer[] {
  const [first] = ranked;
  const allowed = new Set(
    [...ranked, ...weighed.found.map(({ layout }) => layout), ...(practice ? [practice.layout] : [])].map(
      keyOf,
    ),
  );
  const { worlds, ahead, nearer } = alternativesTo(first, byBoth, (layout) => allowed.has(keyOf(layout)));
  if (worlds.length < LEAST_WORLDS || ahead.length === 0) return [];
  const drawn = worlds.map((world) => ({
    deviations: problem.worlds[1 + world],
    beliefs: beliefs.sizes[world],
  }));
  const unknowns = variedUnknowns(inputs, drawn, coreNumbers(first, ball));
  return unknowns
    .map(({ unknown, field, numbers }): SurerAnswer => {
      const alike = worldsAlike(numbers);
      const value = valueOfKnowing(alike, ahead, NO_MATTER);
      const size = fromKeys(WISHED_IDS, (id) => {
        const rows = nearer[id];
        return rows ? meanOfChosen(alike, value, rows) : 0;
      });
      return { unknown, field, chance: value.chance, gain: value.gain, size };
    })
    .filter(({ chance }) => chance >= WORTH_SAYING)
    .sort((a, b) => b.chance - a.chance || b.gain - a.gain);
}

/**
 * Expected value of a number for the layout that would be chosen, averaged over the worlds in which another layout is chosen; 0 if there
 * are none.
 *
 * @param rows  the number, layout by layout
 */
function meanOfChosen(
  { known }: WorldsAlike,
  { chosen, trust }: ValueOfKnowing,
  rows: readonly Float64Array[],
): number {
  const expected = new Map(
    [...new Set(chosen)]
      .filter((choice) => choice >= 0)
      .map((choice) => [
        choice,
        { mean: meanOf(rows[choice]), beyond: aboutMean(localMeans(known, rows[choice])) },
      ]),
  );
  const come = chosen.flatMap((choice, world) => {
    const each = expected.get(choice);
    return each ? [each.mean + trust * each.beyond[world]] : [];
  });
  return come.length > 0 ? meanSimple(come) : 0;
}
