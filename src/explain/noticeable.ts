import type { SharedId } from '../records/schemas/reaction-numbers.js';

/** Least differences that are explained by a cause, by reaction number; in the units of answers. */
export type Noticeable = Readonly<Record<SharedId, number>>;

/** Some 7 % of the range of the layouts of one ball. A choice of this project. */
export const NOTICEABLE: Noticeable = {
  hookStartFt: 0.15,
  sharpnessDegPerFt: 0.01,
  totalHookBoards: 0.3,
  flareIn: 0.05,
};

/** Points of score below which a change is not explained. A choice of this project. */
export const NOTICEABLE_POINTS = 2;
