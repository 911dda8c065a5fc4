import { BOARD } from '../base/constants.js';
import { DEGREE, FOOT, INCH, to } from '../base/units.js';
import type { SimulatedLayout } from '../records/answers/answer.js';
import type { Outcome } from './simulator.js';

/** The reaction numbers that are compared between layouts and worlds, in the units people read. */
export const READINGS: Record<keyof SimulatedLayout['bands']['reaction'], (o: Outcome) => number> = {
  hookStartFt: (o) => to(o.reaction.hookStart, FOOT),
  sharpnessDegPerFt: (o) => to(o.reaction.sharpness, DEGREE / FOOT),
  totalHookBoards: (o) => to(o.reaction.totalHook, BOARD),
  entryAngleDeg: (o) => to(o.reaction.entryAngle, DEGREE),
  flareIn: (o) => to(o.reaction.flare, INCH),
};
