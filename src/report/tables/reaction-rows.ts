import type { ReactionAnswer } from '../../records/answers/answer.js';
import type { Quantity, Units } from '../text/display-units.js';
import type { Column } from '../text/table.js';

type Key = 'hookStartFt' | 'sharpnessDegPerFt' | 'totalHookBoards' | 'entryAngleDeg' | 'flareIn';

interface ReactionRow {
  readonly key: Key;
  readonly name: string;
  /** The same above a narrow column. */
  readonly short: string;
  readonly quantity: Quantity;
}

/** The reaction numbers a person compares, in the order they happen down the lane. */
export const REACTION_ROWS: readonly ReactionRow[] = [
  { key: 'hookStartFt', name: 'hook starts', short: 'starts', quantity: 'lane' },
  { key: 'sharpnessDegPerFt', name: 'sharpness', short: 'sharp', quantity: 'sharpness' },
  { key: 'totalHookBoards', name: 'total hook', short: 'hook', quantity: 'boards' },
  { key: 'entryAngleDeg', name: 'entry angle', short: 'entry', quantity: 'angle' },
  { key: 'flareIn', name: 'flare', short: 'flare', quantity: 'flare' },
];

/** A column for each of some of these numbers. */
export const reactionHeads = <K extends Key>(keys: readonly K[], units: Units): Column[] =>
  rowsFor(keys).map(({ short, quantity }) => ({ head: `${short}\n${units[quantity].name}` }));

export const reactionCells = <K extends Key>(
  reaction: Pick<ReactionAnswer, K>,
  keys: readonly K[],
  units: Units,
): string[] => rowsFor(keys).map(({ key, quantity }) => units[quantity].show(reaction[key as K]));

/** The same of differences, with signs. */
export const changeCells = <K extends Key>(
  change: Pick<ReactionAnswer, K>,
  keys: readonly K[],
  units: Units,
): string[] => rowsFor(keys).map(({ key, quantity }) => units[quantity].change(change[key as K]));

export const REACTION_KEYS = REACTION_ROWS.map(({ key }) => key);
export const LANE_KEYS = ['hookStartFt', 'sharpnessDegPerFt', 'totalHookBoards', 'entryAngleDeg'] as const;

const rowsFor = (keys: readonly Key[]): ReactionRow[] =>
  REACTION_ROWS.filter(({ key }) => keys.includes(key));
