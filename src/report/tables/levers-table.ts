import type { LeverEffect, RankedLayout } from '../../records/answers/answer.js';
import { LANE_IDS } from '../../records/schemas/reaction-numbers.js';
import type { Units } from '../text/display-units.js';
import { points } from '../text/figures.js';
import type { Page } from '../text/page.js';
import { type Grid, gridLines } from '../text/table.js';
import { say } from '../wording/say.js';
import { reactionCells, reactionHeads } from './reaction-rows.js';

/** What other changes than of the layout would do, below what the best layout does. */
export const leversTable = (best: RankedLayout, levers: readonly LeverEffect[], page: Page): string[] =>
  gridLines(leversGrid(best, levers, page.units), page);

export const leversGrid = (best: RankedLayout, levers: readonly LeverEffect[], units: Units): Grid => ({
  columns: [{ head: 'with the best layout and' }, { head: 'score' }, ...reactionHeads(LANE_IDS, units)],
  rows: (levers.length === 0
    ? []
    : [
        { what: 'nothing else changed', score: best.nominalScore, reaction: best.reaction },
        ...levers.map(({ change, ...effect }) => ({ what: say(change, units), ...effect })),
      ]
  ).map(({ what, score, reaction }) => [what, points(score), ...reactionCells(reaction, LANE_IDS, units)]),
});
