import type { RankedLayout, SimulatedLayout } from '../../records/answers/answer.js';
import { COMPARED_IDS } from '../../records/schemas/reaction-numbers.js';
import type { Units } from '../text/display-units.js';
import { percent, points } from '../text/figures.js';
import type { Grid } from '../text/table.js';
import { reactionCells, reactionHeads } from './reaction-rows.js';

/** The ranked layouts one below the other, and last the usual middle layout to compare with. */
export const rankingGrid = (
  layouts: readonly RankedLayout[],
  middle: SimulatedLayout,
  units: Units,
): Grid => ({
  columns: [
    { head: 'layout' },
    { head: `buffer\n${units.roughTape.name}` },
    { head: 'score' },
    ...reactionHeads(COMPARED_IDS, units),
    { head: 'sure\n%' },
  ],
  rows: [
    ...layouts.map((layout) => [
      `${layout.rank} ${layout.text}`,
      ...cells(layout, units),
      percent(layout.confidence.beatsMiddle),
    ]),
    [`* ${middle.text}`, ...cells(middle, units), ''],
  ],
});

const cells = (layout: SimulatedLayout, units: Units): string[] => [
  units.roughTape.show(layout.pinBufferIn),
  points(layout.score),
  ...reactionCells(layout.reaction, COMPARED_IDS, units),
];
