import { BOARD } from '../base/constants.js';
import { DEGREE, FOOT, INCH } from '../base/units.js';
import type { Reaction } from '../motion/reaction/reaction.js';
import type { Launch } from '../motion/shot/release.js';
import type { ReactionId } from '../records/schemas/reaction-numbers.js';

/** One number that the regression predicts. */
interface TargetNumber {
  /** The id of a reaction number, or that of the distance from the laydown to the breakpoint. */
  readonly id: ReactionId | 'breakpointFromLaydown';
  readonly name: string;
  /** The unit people read it in, and that unit in SI. */
  readonly unit: string;
  readonly si: number;
  readonly of: (reaction: Reaction, launch: Launch) => number;
}

/**
 * The numbers that the regression predicts, in SI. Name and unit are for reports; they and the order must be those of the committed
 * model's card.
 */
export const TARGETS = [
  { id: 'hookStartFt', name: 'hook start', unit: 'ft', si: FOOT, of: (r) => r.hookStart },
  { id: 'sharpnessDegPerFt', name: 'sharpness', unit: '°/ft', si: DEGREE / FOOT, of: (r) => r.sharpness },
  { id: 'totalHookBoards', name: 'total hook', unit: 'boards', si: BOARD, of: (r) => r.totalHook },
  { id: 'entryAngleDeg', name: 'entry angle', unit: '°', si: DEGREE, of: (r) => r.entryAngle },
  { id: 'flareIn', name: 'flare', unit: 'in', si: INCH, of: (r) => r.flare },
  {
    id: 'breakpointFromLaydown',
    name: 'breakpoint beyond laydown',
    unit: 'boards',
    si: BOARD,
    of: (r, l) => r.breakpointX - l.x,
  },
  { id: 'rollStartFt', name: 'roll start', unit: 'ft', si: FOOT, of: (r) => r.rollStart },
  { id: 'turns', name: 'turns', unit: 'turns', si: 1, of: (r) => r.turns },
] as const satisfies readonly TargetNumber[];

export type TargetId = (typeof TARGETS)[number]['id'];
