import { BOARD } from '../base/constants.js';
import { DEGREE, FOOT, INCH } from '../base/units.js';
import type { Reaction } from '../motion/reaction/reaction.js';
import type { Launch } from '../motion/shot/release.js';

/** One reaction number the regression answers with. */
export interface TargetNumber {
  readonly name: string;
  /** The unit people read it in, and that unit in SI. */
  readonly unit: string;
  readonly si: number;
  readonly of: (reaction: Reaction, launch: Launch) => number;
}

/** What the regression answers, in this order. In SI inside; the unit is for reports. */
export const TARGETS: readonly TargetNumber[] = [
  { name: 'hook start', unit: 'ft', si: FOOT, of: (r) => r.hookStart },
  { name: 'sharpness', unit: '°/ft', si: DEGREE / FOOT, of: (r) => r.sharpness },
  { name: 'total hook', unit: 'boards', si: BOARD, of: (r) => r.totalHook },
  { name: 'entry angle', unit: '°', si: DEGREE, of: (r) => r.entryAngle },
  { name: 'flare', unit: 'in', si: INCH, of: (r) => r.flare },
  { name: 'breakpoint beyond laydown', unit: 'boards', si: BOARD, of: (r, l) => r.breakpointX - l.x },
  { name: 'roll start', unit: 'ft', si: FOOT, of: (r) => r.rollStart },
  { name: 'turns', unit: 'turns', si: 1, of: (r) => r.turns },
];
