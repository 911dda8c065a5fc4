import type { RankedLayout, SimulatedLayout } from '../../records/answers/answer.js';
import { type Ink, SERIES } from '../scene/scene.js';

/** One of the layouts that are drawn together: its sign and its ink are the same in every picture. */
export interface Compared {
  readonly sign: string;
  readonly ink: Ink;
  /** The layout as it is written, and what it stands for. */
  readonly name: string;
  readonly layout: SimulatedLayout;
}

/** The sign of the usual middle layout. */
export const USUAL = '*';

/** Ranked layouts by their numbers, and last the usual middle one. */
export const comparedWithUsual = (
  layouts: readonly RankedLayout[],
  middle: SimulatedLayout,
): readonly Compared[] => [
  ...layouts.map((layout) => ({
    sign: `${layout.rank}`,
    ink: seriesInk(layout.rank),
    name: layout.text,
    layout,
  })),
  { sign: USUAL, ink: 'soft', name: `${middle.text}, the usual middle layout`, layout: middle },
];

/** Inks come round again after five: the sign says which is which. */
const seriesInk = (rank: number): Ink => SERIES[(rank - 1) % SERIES.length] as Ink;

/** What a part of a picture that belongs to a layout is called. */
export const partOf = (sign: string): string => `layout ${sign}`;
