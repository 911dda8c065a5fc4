import type { RecommendAnswer } from '../records/answer.js';
import { keyOf } from './candidates.js';
import type { InAllWorlds } from './in-all-worlds.js';
import type { SearchResult } from './search.js';

/** What the regression did in a search, and how far it and physics differ on the layouts that are listed. */
export function regressionAnswer(
  { surveyed, found }: SearchResult,
  listed: readonly InAllWorlds[],
): RecommendAnswer['search']['regression'] {
  if ('why' in surveyed)
    return {
      notice: `physics searched alone: ${surveyed.why}`,
      candidateWorlds: 0,
      tunedTo: 0,
      difference: null,
    };
  const expected = new Map(found.map((row) => [keyOf(row.layout), row.expected]));
  const off = listed.flatMap(({ layout, worlds }) => {
    const mean = expected.get(keyOf(layout));
    return typeof mean === 'number' ? [Math.abs(mean - worlds.meanScore)] : [];
  });
  return {
    notice: null,
    candidateWorlds: surveyed.candidateWorlds,
    tunedTo: surveyed.tunedTo,
    difference:
      off.length === 0
        ? null
        : { typical: Math.sqrt(meanSquare(off)), worst: Math.max(...off), layouts: off.length },
  };
}

const meanSquare = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value * value, 0) / values.length;
