import { meanSimple } from 'simple-statistics';
import type { BallProblem } from '../../prepare/ball-problem.js';
import type { RegressionAnswer } from '../../records/answers/answer.js';
import type { SearchResult } from '../../search/race.js';
import type { LayoutOutcomes } from '../../search/simulate-layouts.js';
import { formatOn } from './layout-answer.js';

/** What the regression did in a search, and how far it and physics differ on the layouts that are listed. */
export async function regressionAnswer(
  { surveyed, byRegression }: Pick<SearchResult, 'surveyed' | 'byRegression'>,
  listed: readonly LayoutOutcomes[],
  ball: Pick<BallProblem, 'marker'>,
): Promise<RegressionAnswer> {
  if ('why' in surveyed)
    return {
      notice: surveyed.why,
      arithmetic: null,
      candidateWorlds: 0,
      tunedTo: 0,
      listed: [],
      difference: null,
    };
  await surveyed.look(listed.map(({ layout }) => layout)); // one that fell behind early was surveyed in few worlds
  const both = listed.flatMap(({ layout, worlds }) => {
    const expected = byRegression(layout);
    return expected === null
      ? []
      : [{ layout: formatOn(ball, layout), byRegression: expected, byPhysics: worlds.meanScore }];
  });
  const off = both.map((each) => Math.abs(each.byRegression - each.byPhysics));
  return {
    notice: null,
    arithmetic: surveyed.arithmetic,
    candidateWorlds: surveyed.candidateWorlds(),
    tunedTo: surveyed.tunedTo,
    listed: both,
    difference:
      off.length === 0
        ? null
        : {
            typical: Math.sqrt(meanSimple(off.map((each) => each * each))),
            worst: Math.max(...off),
            layouts: off.length,
          },
  };
}
