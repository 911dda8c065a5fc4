import type { LeverEffect, RankedLayout } from '../records/answer.js';
import type { Units } from './display-units.js';
import { points } from './figures.js';
import type { Page } from './page.js';
import { LANE_KEYS, reactionCells, reactionHeads } from './reaction-rows.js';
import { type Grid, gridLines } from './table.js';

/** What other changes than of the layout would do, below what the best layout does. */
export const leversTable = (best: RankedLayout, levers: readonly LeverEffect[], page: Page): string[] =>
  gridLines(leversGrid(best, levers, page.units), page);

export const leversGrid = (best: RankedLayout, levers: readonly LeverEffect[], units: Units): Grid => ({
  columns: [{ head: 'with the best layout and' }, { head: 'score' }, ...reactionHeads(LANE_KEYS, units)],
  rows: (levers.length === 0
    ? []
    : [{ change: 'nothing else changed', score: best.nominalScore, reaction: best.reaction }, ...levers]
  ).map(({ change, score, reaction }) => [
    change,
    points(score),
    ...reactionCells(reaction, LANE_KEYS, units),
  ]),
});
