import type { LeverEffect, SimulatedLayout } from '../../records/answers/answer.js';
import { LANE_IDS } from '../../records/schemas/reaction-numbers.js';
import type { Units } from '../text/display-units.js';
import { points } from '../text/figures.js';
import type { Grid } from '../text/table.js';
import { say } from '../wording/say.js';
import { reactionCells, reactionHeads } from './reaction-rows.js';

/** What a layout does, beside which levers are held. */
type Held = Pick<SimulatedLayout, 'nominalScore' | 'reaction'>;

/**
 * What other changes than of the layout would do, below what it does.
 *
 * @param whose  which layout: `the best layout`
 */
export const leversGrid = (
  layout: Held,
  levers: readonly LeverEffect[],
  whose: string,
  units: Units,
): Grid => ({
  columns: [{ head: `with ${whose} and` }, { head: 'score' }, ...reactionHeads(LANE_IDS, units)],
  rows: (levers.length === 0
    ? []
    : [
        { what: 'nothing else changed', score: layout.nominalScore, reaction: layout.reaction },
        ...levers.map(({ change, ...effect }) => ({ what: say(change, units), ...effect })),
      ]
  ).map(({ what, score, reaction }) => [what, points(score), ...reactionCells(reaction, LANE_IDS, units)]),
});
