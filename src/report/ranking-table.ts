import type { RankedLayout, SimulatedLayout } from '../records/answer.js';
import { eighths, percent, points } from './figures.js';
import type { Page } from './page.js';
import { REACTION_ROWS } from './reaction-rows.js';
import { type Column, table } from './table.js';

const HEADS: readonly Column[] = [
  { head: 'layout' },
  { head: 'buffer\nin' },
  { head: 'score' },
  { head: 'starts\nft' },
  { head: 'shape\ndeg/ft' },
  { head: 'hook\nboards' },
  { head: 'entry\ndeg' },
  { head: 'flare\nin' },
  { head: 'sure\n%' },
];

/** The ranked layouts one below the other, and last the usual middle layout to compare with. */
export const rankingTable = (
  layouts: readonly RankedLayout[],
  middle: SimulatedLayout,
  page: Page,
): string[] =>
  table(
    HEADS,
    [
      ...layouts.map((layout) => [
        `${layout.rank} ${layout.text}`,
        ...cells(layout),
        percent(layout.confidence.beatsMiddle),
      ]),
      [`* ${middle.text}`, ...cells(middle), ''],
    ],
    page,
  );

const cells = (layout: SimulatedLayout): string[] => [
  eighths(layout.pinBufferIn),
  points(layout.score),
  ...REACTION_ROWS.map(({ key, show }) => show(layout.reaction[key])),
];
