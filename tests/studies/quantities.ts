import { BOARD } from '../../src/base/constants.js';
import { DEGREE, FOOT, INCH, to } from '../../src/base/units.js';
import type { Reaction } from '../../src/motion/reaction/reaction.js';

/** The reaction numbers of the study, in the units people read. */
export const QUANTITIES = {
  hookStart: { title: 'hook start, ft', digits: 2, of: (r: Reaction) => to(r.hookStart, FOOT) },
  window: { title: 'window, ft', digits: 2, of: (r: Reaction) => to(r.rollStart - r.hookStart, FOOT) },
  rollStart: { title: 'roll start, ft', digits: 2, of: (r: Reaction) => to(r.rollStart, FOOT) },
  sharpness: { title: 'sharpness, °/ft', digits: 3, of: (r: Reaction) => to(r.sharpness, DEGREE / FOOT) },
  totalHook: { title: 'total hook, boards', digits: 2, of: (r: Reaction) => to(r.totalHook, BOARD) },
  entryAngle: { title: 'entry angle, °', digits: 2, of: (r: Reaction) => to(r.entryAngle, DEGREE) },
  flare: { title: 'flare, in', digits: 2, of: (r: Reaction) => to(r.flare, INCH) },
} as const;

export type QuantityName = keyof typeof QUANTITIES;

export const QUANTITY_NAMES = Object.keys(QUANTITIES) as readonly QuantityName[];

/** One value of each. */
export type Numbers = Readonly<Record<QuantityName, number>>;

export const numbersOf = (reaction: Reaction): Numbers =>
  mapQuantities((name) => QUANTITIES[name].of(reaction));

export const mapQuantities = (value: (name: QuantityName) => number): Numbers =>
  Object.fromEntries(QUANTITY_NAMES.map((name) => [name, value(name)])) as Numbers;
