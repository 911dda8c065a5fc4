import type { SharedId } from '../records/schemas/reaction-numbers.js';

/** Least differences that are worth a cause, by reaction number; in the units of answers. */
export type Noticeable = Readonly<Record<SharedId, number>>;

/** Smaller ones are not explained: some 7 % of what the layouts of one ball span. A choice of this project. */
export const NOTICEABLE: Noticeable = {
  hookStartFt: 0.15,
  sharpnessDegPerFt: 0.01,
  totalHookBoards: 0.3,
  flareIn: 0.05,
};

/** Points of score below which a change is not explained. A choice of this project. */
export const NOTICEABLE_POINTS = 2;
