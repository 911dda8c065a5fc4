import type { BagRemarks, PairRemarks } from '../../../records/answers/statements/coach-remarks.js';
import { type Units, withUnit } from '../../text/display-units.js';
import { signed } from '../../text/figures.js';
import { LEVERS } from './changes.js';
import { sayIn } from './say-in.js';
import type { Wording } from './wording.js';

/** What would move a reaction most, as sentences. */
export const PAIR_REMARKS: Wording<PairRemarks> = {
  'something-helps': ({ ways }, units) =>
    `Over the usual middle layout, in points: ${waysText(ways, units)}.`,
  'nothing-helps-much': ({ ways }, units) =>
    `Nothing tried brings much over the usual middle layout: ${waysText(ways, units)}.`,
};

const waysText = (ways: PairRemarks['something-helps']['ways'], units: Units): string =>
  ways
    .map((way) => {
      const what = 'layout' in way ? `the layout ${way.layout}` : sayIn(LEVERS, way.lever, units);
      return `${what} ${signed(way.gain, 0)}`;
    })
    .join(', ');

/** What the balls of a bag do beside one another, as sentences. */
export const BAG_REMARKS: Wording<BagRemarks> = {
  'balls-do-the-same': ({ one, other }) => `${one} and ${other} do the same here.`,
  'gap-between-balls': ({ below, belowBoards, above, aboveBoards }, { boards }) =>
    `Nothing lies between ${below} (${withUnit(belowBoards, boards)} of hook) and ${above} (${boards.show(aboveBoards)}).`,
};
