import { BOARD } from '../../base/constants.js';
import { fromKeys } from '../../base/from-keys.js';
import { DEGREE, FOOT, INCH, to } from '../../base/units.js';
import { ln } from '../../math/ln.js';
import type { Reaction } from '../../motion/reaction/reaction.js';
import { BELIEFS, type Belief, type BelievedId } from '../../records/shared/beliefs.js';
import type { LayoutQuantities } from './layout-quantities.js';

/** The reaction number that a belief moves, and the unit of its sizes. */
const MOVED = {
  hookStartFt: ['hookStart', FOOT],
  sharpnessDegPerFt: ['sharpness', DEGREE / FOOT],
  totalHookBoards: ['totalHook', BOARD],
  rollStartFt: ['rollStart', FOOT],
  flareIn: ['flare', INCH],
} as const satisfies Readonly<Record<BelievedId, readonly [keyof Reaction, number]>>;

export type MovedNumber = (typeof MOVED)[BelievedId][0];

export const movedBy = ({ reading }: Belief): MovedNumber => MOVED[reading][0];

/** Share of a belief's usual range that lies between two values of its quantity; values outside the range count as its ends. */
export function shareOfRange({ quantity, from, to }: Belief, a: number, b: number): number {
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  const scale = quantity === 'finishGrit' ? ln : (value: number): number => value;
  const within = (value: number): number => scale(Math.min(high, Math.max(low, value)));
  return (within(b) - within(a)) / (scale(to) - scale(from));
}

/** What each belief, held in full size, adds to its reaction number for one ball beside another; SI, in the order of `BELIEFS`. */
export type BeliefEffects = Float64Array;

export const beliefEffects = (quantities: LayoutQuantities, reference: LayoutQuantities): BeliefEffects =>
  Float64Array.from(
    BELIEFS,
    (belief) =>
      belief.most *
      MOVED[belief.reading][1] *
      shareOfRange(belief, reference[belief.quantity], quantities[belief.quantity]),
  );

/** What beliefs of some sizes add to a reaction number, in the unit of answers. */
export function addedInUnit(id: BelievedId, effects: BeliefEffects, sizes: BeliefSizes): number {
  const [number, unit] = MOVED[id];
  return to(addedTo(number, effects, sizes), unit);
}

/** Sizes of all beliefs as shares of their most, in the order of `BELIEFS`; 0 where one does not hold. */
export type BeliefSizes = readonly number[];

/** What beliefs of some sizes add to one reaction number. */
export function addedTo(number: MovedNumber, effects: BeliefEffects, sizes: BeliefSizes): number {
  let sum = 0;
  for (const b of MOVERS[number]) sum += sizes[b] * effects[b];
  return sum;
}

/** Places of the beliefs that move each number, prepared since a search adds them up hundreds of thousands of times. */
const MOVERS: Readonly<Record<MovedNumber, readonly number[]>> = fromKeys(
  Object.values(MOVED).map(([number]) => number),
  (number) => [...BELIEFS.keys()].filter((b) => movedBy(BELIEFS[b]) === number),
);
